package withy.web.pages.evidence;

import java.time.DateTimeException;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.item.Misconception;
import withy.usecase.Behind;
import withy.usecase.Behind.Which;
import withy.usecase.Evidence;
import withy.web.Declined;
import withy.web.Fault;
import withy.web.SentMoment;
import withy.web.Visit;
import withy.web.pages.Address;

/**
 * Which answers a list is asked for, as its address says it.
 *
 * @param before the place where the page begins; null for the newest
 */
record BehindAsked(Behind which, Evidence.@Nullable Place before) {
  /** Parts a moment from an item; neither holds it. */
  private static final String BETWEEN = "_";

  /**
   * @throws Declined if a value is none of those that it can be, naming the field
   */
  static BehindAsked of(Visit visit) {
    Which which = term(visit, Which.class, "which");
    String concept = word(visit, Concept.class, "concept");
    if (which == Which.FIRST && concept == null) {
      throw Declined.field(Fault.MALFORMED_FIELD, "concept");
    }
    Behind behind =
        new Behind(
            visit.context().pathParam("id"),
            asked(visit, "learner"),
            asked(visit, "assignment"),
            concept,
            word(visit, Form.class, "form"),
            asked(visit, "key"),
            asked(visit, "option"),
            word(visit, Misconception.class, "misconception"),
            which == null ? Which.ALL : which,
            moment(visit, "since"),
            moment(visit, "until"));
    return new BehindAsked(behind, place(asked(visit, "before")));
  }

  private static @Nullable String asked(Visit visit, String field) {
    String value = visit.context().queryParam(field);
    return value == null || value.isEmpty() ? null : value;
  }

  private static <E extends Enum<E> & Term> @Nullable String word(
      Visit visit, Class<E> type, String field) {
    E term = term(visit, type, field);
    return term == null ? null : term.id();
  }

  private static <E extends Enum<E> & Term> @Nullable E term(
      Visit visit, Class<E> type, String field) {
    String value = asked(visit, field);
    try {
      return value == null ? null : Term.parse(type, value);
    } catch (IllegalArgumentException unknown) {
      throw Declined.field(Fault.MALFORMED_FIELD, field);
    }
  }

  private static @Nullable Instant moment(Visit visit, String field) {
    String value = asked(visit, field);
    try {
      return value == null ? null : SentMoment.of(value);
    } catch (DateTimeException malformed) {
      throw Declined.field(Fault.MALFORMED_FIELD, field);
    }
  }

  private static Evidence.@Nullable Place place(@Nullable String text) {
    if (text == null) {
      return null;
    }
    String[] parts = text.split(BETWEEN, 2);
    try {
      return new Evidence.Place(SentMoment.of(parts[0]), parts[1]);
    } catch (DateTimeException | ArrayIndexOutOfBoundsException malformed) {
      throw Declined.field(Fault.MALFORMED_FIELD, "before");
    }
  }

  /** The same list from an older place on. */
  Address from(Evidence.Place place) {
    return address().with("before", place.answeredAt() + BETWEEN + place.item());
  }

  /** The newest of the same list. */
  Address address() {
    return Address.of("/classes/" + which.schoolClass() + "/responses")
        .with("learner", text(which.learner()))
        .with("assignment", text(which.assignment()))
        .with("concept", text(which.concept()))
        .with("form", text(which.form()))
        .with("key", text(which.key()))
        .with("option", text(which.option()))
        .with("misconception", text(which.misconception()))
        .with("which", which.which() == Which.ALL ? "" : which.which().id())
        .with("since", text(which.since()))
        .with("until", text(which.until()));
  }

  private static String text(@Nullable Object value) {
    return value == null ? "" : value.toString();
  }
}
