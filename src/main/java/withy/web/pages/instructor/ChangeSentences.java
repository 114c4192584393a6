package withy.web.pages.instructor;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import withy.core.measurement.SessionChange;
import withy.core.measurement.SessionChange.Trend;
import withy.usecase.ClassReviews;

/** Says what changed in the latest session of a class, clear changes first. */
record ChangeSentences(Phrases phrases, AnswersBehind answers) {
  List<Saying> of(ClassReviews.Latest latest) {
    List<Saying> sentences = new ArrayList<>();
    Instant began = latest.began();
    if (began == null) {
      return sentences;
    }
    for (Trend trend : List.of(Trend.BETTER, Trend.WORSE)) {
      of(trend, latest).forEach(each -> sentences.add(sentence(each, began)));
    }
    List<Linked> unclear =
        of(Trend.UNCLEAR, latest).map(each -> in(each, name(each), began)).toList();
    if (!unclear.isEmpty()) {
      sentences.add(new Saying(phrases.text("review.session-unclear"), unclear));
    }
    return sentences;
  }

  private static Stream<SessionChange> of(Trend trend, ClassReviews.Latest latest) {
    return latest.changes().stream().filter(each -> each.trend() == trend);
  }

  private Saying sentence(SessionChange change, Instant began) {
    String said =
        phrases.text(
            change.trend() == Trend.BETTER ? "review.session-better" : "review.session-worse",
            name(change),
            phrases.percent(change.before().mean()),
            phrases.percent(change.now().mean()),
            change.learners());
    Linked in = in(change, phrases.text("review.session-in"), began);
    return new Saying(said, List.of(in, before(change, began)));
  }

  private Linked in(SessionChange change, String text, Instant began) {
    String says = phrases.text("review.session-in-says", text, name(change));
    return new Linked(text, says, answers.since(change.concept(), began));
  }

  private Linked before(SessionChange change, Instant began) {
    String text = phrases.text("review.session-before");
    String says = phrases.text("review.session-before-says", text, name(change));
    return new Linked(text, says, answers.until(change.concept(), began));
  }

  private String name(SessionChange change) {
    return phrases.concept(change.concept());
  }
}
