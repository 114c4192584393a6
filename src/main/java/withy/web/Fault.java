package withy.web;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import withy.usecase.Reason;

/**
 * What can be wrong with a call, with the HTTP status that says so and the field that is at fault.
 * Title and detail stand in the message bundle under {@code problem.ID.title} and {@code
 * problem.ID.detail}.
 */
public enum Fault {
  MALFORMED_REQUEST(400),
  NO_JSON(400),
  NOT_SIGNED_IN(401),
  WRONG_SIGN_IN(401),
  OTHER_ORIGIN(403),
  NO_TOKEN(403),
  WRONG_ROLE(403),
  WRONG_SET_UP_CODE(403, "setUpCode"),
  WRONG_INVITATION(403, "invitation"),
  NOT_FOUND(404),
  UNKNOWN_CLASS(404, "class"),
  UNKNOWN_WATER(404, "water"),
  NO_DRILL_SET(404),
  NO_INVITATION(404),
  NO_COURSE(404),
  NO_COLLEAGUE(404),
  UNKNOWN_CODE(404, "code"),
  UNKNOWN_ASSIGNMENT(404),
  UNKNOWN_ITEM(404, "item"),
  UNKNOWN_LEARNER(404, "learners"),
  WRONG_METHOD(405),
  ALREADY_ANSWERED(409, "item"),
  NOT_ANSWERED(409),
  NOT_OPEN(409),
  RESPONSE_ID_USED(409, "id"),
  OUTDATED_ITEM(409, "item"),
  NICKNAME_TAKEN(409, "nickname"),
  NAME_TAKEN(409, "name"),
  CLASS_FULL(409),
  TOO_MANY_CLASSES(409),
  TOO_MANY_WATERS(409),
  TOO_MANY_DRILL_SETS(409),
  TOO_MANY_INVITATIONS(409),
  TOO_MANY_COURSES(409),
  NOT_EMPTY(409),
  COPY_REFUSED(409, "file"),
  TOO_LARGE(413),
  ADDRESS_TOO_LONG(414),
  WRONG_MEDIA_TYPE(415),
  MALFORMED_FIELD(422),
  MISSING_FIELD(422),
  UNKNOWN_FIELD(422),
  UNKNOWN_OPTION(422, "option"),
  NO_NUMBER(422, "option"),
  OTHER_UNIT(422, "option"),
  INCOMPLETE_ANSWER(422, "option"),
  NICKNAME_UNFIT(422, "nickname"),
  NAME_UNFIT(422, "name"),
  PASSWORD_UNFIT(422, "password"),
  NOTHING_TO_DRILL(422, "composition"),
  DUE_BEFORE_OPEN(422, "due"),
  NO_PASSAGE(422, "water"),
  UNKNOWN_DRILL_SET(422, "drillSet"),
  UNFIT_WATER(422),
  UNFIT_DRILL_SET(422),
  TOO_MANY_TRIES(429),
  TOO_MANY_RESPONSES(429),
  HEADERS_TOO_LARGE(431),
  INTERNAL(500),
  UNAVAILABLE(503),
  BUSY(503);

  private final int status;
  private final @Nullable String field;

  Fault(int status) {
    this(status, null);
  }

  Fault(int status, @Nullable String field) {
    this.status = status;
    this.field = field;
  }

  /** The HTTP status. */
  public int status() {
    return status;
  }

  /** The field that is at fault, null where it is none or not always the same. */
  @Nullable String field() {
    return field;
  }

  /** The name in problem documents and message bundles: {@code not-found}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The fault behind the refusal of a use case: the one of the same name. */
  static Fault of(Reason reason) {
    return reason == Reason.MALFORMED ? MALFORMED_FIELD : valueOf(reason.name());
  }

  /** The fault that says what an HTTP status means: the first of that status. */
  static Fault ofStatus(int status) {
    for (Fault each : values()) {
      if (each.status == status) {
        return each;
      }
    }
    return status >= 500 ? INTERNAL : MALFORMED_REQUEST;
  }
}
