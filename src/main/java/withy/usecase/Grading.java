package withy.usecase;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.item.Answer;
import withy.core.item.Grade;
import withy.core.item.Item;
import withy.core.item.Misconception;
import withy.core.item.Option;
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
      Instant answeredAt) {
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
        issued.options().stream().map(each -> offered(each.option())).toList(),
        grade != null && grade.correct(),
        shownMillis,
        answeredAt);
  }

  private static OfferedOption offered(Option option) {
    Misconception belief = option.misconception();
    return new OfferedOption(option.value(), belief == null ? null : belief.id());
  }

  /** Whether the response was given to this item, as far as what is kept of both can tell. */
  static boolean agrees(Item item, Response response) {
    return item.form().id().equals(response.form())
        && item.key().equals(response.key())
        && item.options().size() == response.offered().size()
        && item.options().stream().map(Grading::offered).allMatch(response.offered()::contains)
        && (response.option() == null || isGraded(item.answer(), response.option(), response));
  }

  private static boolean isGraded(Answer answer, String given, Response response) {
    return answer.accepts(given) && answer.grade(given).correct() == response.correct();
  }
}
