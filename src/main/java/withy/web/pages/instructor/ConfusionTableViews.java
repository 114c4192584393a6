package withy.web.pages.instructor;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkGroup;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.measurement.Confusion;
import withy.core.measurement.ConfusionTable;
import withy.core.measurement.ConfusionTable.Alike;
import withy.core.measurement.MarkPair;
import withy.core.measurement.PairSums;

/** Lays out which mark is taken for which. */
final class ConfusionTableViews {
  private static final int ALIKE = 5;

  private final Phrases phrases;

  ConfusionTableViews(Phrases phrases) {
    this.phrases = phrases;
  }

  /**
   * The table; null where no item asked for the kind of a mark.
   *
   * @param tested which pairs are more than slips
   */
  @Nullable ConfusionTableView of(
      Practice practice, ConfusionTable table, Collection<Confusion> tested) {
    if (table.cells().isEmpty()) {
      return null;
    }
    SortedSet<MarkPair> listed = new TreeSet<>();
    tested.stream()
        .filter(Confusion::listed)
        .forEach(each -> listed.add(new MarkPair(each.shown(), each.answered())));
    List<String> kinds = kinds(practice, table);
    List<ConfusionTableView.Mark> columns = marks(practice, kinds);
    List<ConfusionTableView.Row> rows = new ArrayList<>();
    for (int i = 0; i < kinds.size(); i++) {
      if (table.cells().containsKey(new MarkPair(kinds.get(i), kinds.get(i)))) {
        List<ConfusionTableView.Cell> cells = new ArrayList<>();
        for (int answer = 0; answer < kinds.size(); answer++) {
          MarkPair pair = new MarkPair(kinds.get(i), kinds.get(answer));
          cells.add(cell(pair, columns.get(answer), table.cells(), listed));
        }
        rows.add(new ConfusionTableView.Row(columns.get(i), cells));
      }
    }
    return new ConfusionTableView(columns, rows, alike(practice, table));
  }

  /** The kinds of the table by family; last those that the practice does not have. */
  private static List<String> kinds(Practice practice, ConfusionTable table) {
    SortedSet<String> met = new TreeSet<>();
    table.cells().keySet().forEach(each -> met.addAll(List.of(each.shown(), each.answered())));
    List<String> kinds = new ArrayList<>();
    for (MarkKind each : practice.kinds()) {
      if (met.remove(each.id())) {
        kinds.add(each.id());
      }
    }
    kinds.addAll(met);
    return kinds;
  }

  private List<ConfusionTableView.Mark> marks(Practice practice, List<String> kinds) {
    List<ConfusionTableView.Mark> marks = new ArrayList<>();
    @Nullable MarkGroup before = null;
    for (String each : kinds) {
      @Nullable MarkGroup group =
          practice.mark(new MarkKind(each)).map(MarkDescription::group).orElse(null);
      boolean begins = !marks.isEmpty() && group != before;
      String number = phrases.whole(marks.size() + 1);
      marks.add(new ConfusionTableView.Mark(number, phrases.kind(practice, each), begins));
      before = group;
    }
    return marks;
  }

  private ConfusionTableView.Cell cell(
      MarkPair pair,
      ConfusionTableView.Mark answer,
      Map<MarkPair, PairSums> cells,
      Set<MarkPair> listed) {
    PairSums sums = cells.get(pair);
    if (sums == null) {
      return new ConfusionTableView.Cell("absent", answer, "", "");
    }
    String count = phrases.text("review.cell", sums.times(), sums.offered());
    if (sums.times() == 0) {
      return new ConfusionTableView.Cell("none", answer, "", count);
    }
    String kind = pair.isRight() ? "right" : listed.contains(pair) ? "listed" : "taken";
    String share = phrases.wholePercent((double) sums.times() / sums.offered());
    return new ConfusionTableView.Cell(kind, answer, share, count);
  }

  private List<String> alike(Practice practice, ConfusionTable table) {
    return table.alike().stream().limit(ALIKE).map(each -> alike(practice, each)).toList();
  }

  private String alike(Practice practice, Alike alike) {
    return phrases.text(
        "review.alike",
        phrases.kind(practice, alike.one()),
        phrases.kind(practice, alike.other()),
        phrases.hundredths(alike.similarity()));
  }
}
