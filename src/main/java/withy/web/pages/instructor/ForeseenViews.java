package withy.web.pages.instructor;

import java.util.List;
import withy.core.Term;
import withy.core.item.Concept;
import withy.core.response.DrillKind;
import withy.drawing.CountBar;
import withy.usecase.ForeseeDrill.Count;
import withy.usecase.ForeseeDrill.Foreseen;

/** Puts into words what a class will meet in a drill. */
record ForeseenViews(Phrases phrases) {
  private static final int FEW = 6;

  /** What the numbers are: counted, or expected. */
  String says(Foreseen foreseen, DrillKind kind) {
    if (foreseen.exact()) {
      return phrases.text("compose.foreseen-exact", foreseen.items());
    }
    return phrases.text("compose.foreseen-" + kind.id(), foreseen.items());
  }

  List<ForeseenGroup> groups(Foreseen foreseen) {
    return List.of(
        concepts(foreseen.concepts()),
        group("forms", foreseen.forms()),
        group("time", foreseen.times()),
        group("water", foreseen.places()),
        group("difficulty", foreseen.difficulties()));
  }

  /** Many concepts that are met as often are said in one row. */
  private ForeseenGroup concepts(List<Count<Concept>> counts) {
    long unlike = counts.stream().map(each -> tenths(each.items())).distinct().count();
    if (counts.size() <= FEW || unlike > 1) {
      return group("concepts", counts);
    }
    String each = phrases.text("compose.each-concept", counts.size());
    return new ForeseenGroup(
        phrases.text("compose.concepts"), List.of(row(each, counts.get(0).items(), 1)));
  }

  private <T extends Term> ForeseenGroup group(String key, List<Count<T>> counts) {
    double most = counts.stream().mapToDouble(Count::items).max().orElse(1);
    return new ForeseenGroup(
        phrases.text("compose." + key),
        counts.stream()
            .map(each -> row(phrases.name(each.what()), each.items(), each.items() / most))
            .toList());
  }

  private ForeseenGroup.Row row(String name, double items, double share) {
    return new ForeseenGroup.Row(
        phrases.text("compose.foreseen-row", name),
        phrases.text("compose.foreseen-items", tenths(items)),
        CountBar.of(Math.min(1, share)));
  }

  private static double tenths(double items) {
    return Math.round(items * 10) / 10.0;
  }
}
