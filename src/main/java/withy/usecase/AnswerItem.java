package withy.usecase;

import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import withy.core.response.Response;

/**
 * Takes a learner's answer to an item. The first answer counts; the same answer sent again, as
 * phones do that heard no reply, gets the same feedback and is not stored twice.
 */
public final class AnswerItem {
  private static final long LONGEST_SHOWN_MILLIS = 24L * 60 * 60 * 1000;

  private final Assignments assignments;
  private final IssuedItems issuedItems;
  private final Responses responses;
  private final Clock clock;
  private final ItemSource source;
  private final FormTimes times;

  public AnswerItem(
      Assignments assignments,
      IssuedItems issuedItems,
      Responses responses,
      Clock clock,
      ItemSource source) {
    this.assignments = assignments;
    this.issuedItems = issuedItems;
    this.responses = responses;
    this.clock = clock;
    this.source = source;
    this.times = new FormTimes(responses);
  }

  /**
   * An answer that is stored for good.
   *
   * @param repeated whether it was stored before
   */
  public record Answered(Feedback feedback, boolean repeated) {}

  /**
   * Stores an answer.
   *
   * @param responseId made by the learner's device, one for each answer
   * @param given null for "not sure", which is not correct and shows no misconception
   * @param shownMillis how long the item was shown, 0 to 24 hours
   * @throws Refused UNKNOWN_ITEM, ALREADY_ANSWERED, RESPONSE_ID_USED, UNKNOWN_OPTION, NO_NUMBER,
   *     OTHER_UNIT, INCOMPLETE_ANSWER, MALFORMED
   */
  public Answered answer(
      LearnerCaller learner,
      UUID responseId,
      String itemId,
      @Nullable Given given,
      long shownMillis) {
    Issue issue = issue(learner, itemId);
    Optional<StoredResponse> before = before(learner, responseId, issue);
    if (before.isPresent()) {
      return new Answered(feedback(issue, before.get()), true);
    }
    if (shownMillis < 0 || shownMillis > LONGEST_SHOWN_MILLIS) {
      throw new Refused(Reason.MALFORMED, "shownMs");
    }
    if (!Issuing.isCurrent(issue)) {
      throw new Refused(Reason.UNKNOWN_ITEM);
    }
    IssuedItem issued = issued(issue);
    String chosen = given == null ? null : AnswerReading.word(issued, given);
    String form = issued.item().form().id();
    boolean rapid = times.isRapid(learner.schoolClass(), form, shownMillis);
    Response response =
        Grading.response(learner, issue, issued, chosen, shownMillis, Moments.now(clock), rapid);
    return store(
        learner,
        new StoredResponse(responseId, learner.id(), learner.schoolClass(), response),
        issue,
        issued);
  }

  private Answered store(
      LearnerCaller learner, StoredResponse response, Issue issue, IssuedItem issued) {
    if (responses.add(response)) {
      return new Answered(Feedback.of(issued, response.response()), false);
    }
    return before(learner, response.id(), issue)
        .map(other -> new Answered(feedback(issue, other), true))
        .orElseThrow(() -> new Refused(Reason.UNKNOWN_ITEM)); // withdrawn meanwhile
  }

  /**
   * What the learner stored under this id, which nothing but the same item may have. The item is
   * looked up first: what is stored of it between the two look-ups is then found by its id.
   */
  private Optional<StoredResponse> before(LearnerCaller learner, UUID responseId, Issue issue) {
    Optional<StoredResponse> ofItem = responses.ofItem(issue.id());
    if (ofItem.filter(found -> !found.id().equals(responseId)).isPresent()) {
      throw new Refused(Reason.ALREADY_ANSWERED);
    }
    Optional<StoredResponse> same = responses.byId(learner.id(), responseId);
    if (same.filter(found -> !found.response().item().equals(issue.id())).isPresent()) {
      throw new Refused(Reason.RESPONSE_ID_USED);
    }
    return same;
  }

  /**
   * The feedback on an item that the learner answered.
   *
   * @throws Refused UNKNOWN_ITEM, NOT_ANSWERED; OUTDATED_ITEM when the generator has changed since
   *     and draws another item
   */
  public Feedback feedback(LearnerCaller learner, String itemId) {
    Issue issue = issue(learner, itemId);
    return responses
        .ofItem(issue.id())
        .map(response -> feedback(issue, response))
        .orElseThrow(() -> new Refused(Reason.NOT_ANSWERED));
  }

  private Feedback feedback(Issue issue, StoredResponse stored) {
    IssuedItem issued = issued(issue);
    if (!Grading.agrees(issued.item(), stored.response())) {
      throw new Refused(Reason.OUTDATED_ITEM);
    }
    return Feedback.of(issued, stored.response());
  }

  /** The item drawn again, which for one with a water is most of the work of an answer. */
  private IssuedItem issued(Issue issue) {
    return IssuedItem.of(issue, Issuing.redraw(source, issue, assignment(issue)));
  }

  private Issue issue(LearnerCaller learner, String itemId) {
    return issuedItems
        .find(itemId)
        .filter(found -> found.learner().equals(learner.id()))
        .orElseThrow(() -> new Refused(Reason.UNKNOWN_ITEM));
  }

  private Assignment assignment(Issue issue) {
    return assignments.find(issue.assignment()).orElseThrow(() -> new Refused(Reason.UNKNOWN_ITEM));
  }
}
