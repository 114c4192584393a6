package withy.web.pages.instructor;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import withy.core.measurement.SessionChange;
import withy.core.measurement.SessionChange.Trend;

/** Says what changed in the latest session of a class, clear changes first. */
record ChangeSentences(Phrases phrases) {
  List<String> of(List<SessionChange> changes) {
    List<String> sentences = new ArrayList<>();
    for (Trend trend : List.of(Trend.BETTER, Trend.WORSE)) {
      changes.stream()
          .filter(each -> each.trend() == trend)
          .forEach(each -> sentences.add(sentence(each)));
    }
    String unclear =
        changes.stream()
            .filter(each -> each.trend() == Trend.UNCLEAR)
            .map(each -> phrases.concept(each.concept()))
            .collect(joining(", "));
    if (!unclear.isEmpty()) {
      sentences.add(phrases.text("review.session-unclear", unclear));
    }
    return sentences;
  }

  private String sentence(SessionChange change) {
    return phrases.text(
        change.trend() == Trend.BETTER ? "review.session-better" : "review.session-worse",
        phrases.concept(change.concept()),
        phrases.percent(change.before().mean()),
        phrases.percent(change.now().mean()),
        change.learners());
  }
}
