package withy.web.pages.instructor;

import java.util.List;
import withy.core.Term;
import withy.core.response.DrillKind;
import withy.drawing.CountBar;
import withy.usecase.ForeseeDrill.Count;
import withy.usecase.ForeseeDrill.Foreseen;

/** Puts into words what a class will meet in a drill. */
record ForeseenViews(Phrases phrases) {
  /** What the numbers are: counted, or expected. */
  String says(Foreseen foreseen, DrillKind kind) {
    if (foreseen.exact()) {
      return phrases.text("compose.foreseen-exact", foreseen.items());
    }
    return phrases.text("compose.foreseen-" + kind.id(), foreseen.items());
  }

  List<ForeseenGroup> groups(Foreseen foreseen) {
    return List.of(
        group("concepts", foreseen.concepts()),
        group("forms", foreseen.forms()),
        group("time", foreseen.times()),
        group("water", foreseen.places()),
        group("difficulty", foreseen.difficulties()));
  }

  private <T extends Term> ForeseenGroup group(String key, List<Count<T>> counts) {
    double most = counts.stream().mapToDouble(Count::items).max().orElse(1);
    return new ForeseenGroup(
        phrases.text("compose." + key), counts.stream().map(each -> row(each, most)).toList());
  }

  private ForeseenGroup.Row row(Count<? extends Term> count, double most) {
    return new ForeseenGroup.Row(
        phrases.text("compose.foreseen-row", phrases.name(count.what())),
        phrases.text("compose.foreseen-items", Math.round(count.items() * 10) / 10.0),
        CountBar.of(Math.min(1, count.items() / most)));
  }
}
