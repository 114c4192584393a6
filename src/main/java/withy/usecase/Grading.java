package withy.usecase;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.item.Answer;
import withy.core.item.Grade;
import withy.core.item.Item;
import withy.core.item.Misconception;
import withy.core.item.Option;
import withy.core.item.Passage;
import withy.core.response.Offer;
import withy.core.response.OfferedOption;
import withy.core.response.Response;

/** Makes the response of an answer, and sees whether an item is the one a response answers. */
final class Grading {
  private Grading() {}

  static Response response(
      LearnerCaller learner,
      Issue issue,
      IssuedItem issued,
      @Nullable String chosen,
      long shownMillis,
      Instant answeredAt,
      boolean rapid) {
    Item item = issued.item();
    Grade grade = chosen == null ? null : item.answer().grade(chosen);
    Misconception belief = grade == null ? null : grade.misconception();
    return new Response(
        learner.nickname(),
        issue.assignment(),
        issue.id(),
        item.form().id(),
        issue.practice().id(),
        item.concepts().stream().map(Term::id).toList(),
        item.key(),
        chosen,
        belief == null ? null : belief.id(),
        Offer.of(item, chosen),
        grade != null && grade.correct(),
        shownMillis,
        answeredAt,
        rapid);
  }

  /** Whether the response was given to this item, as far as what is kept of both can tell. */
  static boolean agrees(Item item, Response response) {
    return item.form().id().equals(response.form())
        && item.key().equals(response.key())
        && (item.answer() instanceof Passage || isOffered(item, response))
        && (response.option() == null || isGraded(item.answer(), response.option(), response));
  }

  private static boolean isOffered(Item item, Response response) {
    return item.options().size() == response.offered().size()
        && item.options().stream().allMatch(each -> isAmong(response.offered(), each));
  }

  private static boolean isAmong(List<OfferedOption> offered, Option option) {
    Misconception belief = option.misconception();
    OfferedOption named = new OfferedOption(option.value(), belief == null ? null : belief.id());
    return offered.stream().map(OfferedOption::namedAlone).anyMatch(named::equals);
  }

  private static boolean isGraded(Answer answer, String given, Response response) {
    return answer.accepts(given) && answer.grade(given).correct() == response.correct();
  }
}
