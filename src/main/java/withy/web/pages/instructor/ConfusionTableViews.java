package withy.web.pages.instructor;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
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
import withy.usecase.SchoolClass;

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
      SchoolClass shown, ConfusionTable table, Collection<Confusion> tested) {
    if (table.cells().isEmpty()) {
      return null;
    }
    SortedSet<MarkPair> listed = new TreeSet<>();
    tested.stream()
        .filter(Confusion::listed)
        .forEach(each -> listed.add(new MarkPair(each.shown(), each.answered())));
    Practice practice = shown.practice();
    AnswersBehind answers = new AnswersBehind(shown.id());
    List<String> kinds = kinds(practice, table);
    List<ConfusionTableView.Mark> columns = marks(practice, kinds);
    List<ConfusionTableView.Row> rows = new ArrayList<>();
    for (int i = 0; i < kinds.size(); i++) {
      if (table.cells().containsKey(new MarkPair(kinds.get(i), kinds.get(i)))) {
        ConfusionTableView.Mark mark = columns.get(i);
        List<ConfusionTableView.Cell> cells = new ArrayList<>();
        for (int answer = 0; answer < kinds.size(); answer++) {
          MarkPair pair = new MarkPair(kinds.get(i), kinds.get(answer));
          PairSums sums = table.cells().get(pair);
          Taken taken = new Taken(pair, mark, columns.get(answer), answers);
          cells.add(sums == null ? absent(taken) : cell(taken, sums, listed.contains(pair)));
        }
        rows.add(new ConfusionTableView.Row(mark, all(mark, answers.about(kinds.get(i))), cells));
      }
    }
    return new ConfusionTableView(columns, rows, alike(practice, table));
  }

  /** A mark that was shown and one that it may have been taken for. */
  private record Taken(
      MarkPair pair,
      ConfusionTableView.Mark shown,
      ConfusionTableView.Mark answer,
      AnswersBehind answers) {}

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

  private Linked all(ConfusionTableView.Mark mark, String behind) {
    return new Linked(mark.name(), phrases.text("review.answers-about", mark.name()), behind);
  }

  private static ConfusionTableView.Cell absent(Taken taken) {
    return new ConfusionTableView.Cell("absent", taken.answer(), "", null);
  }

  private ConfusionTableView.Cell cell(Taken taken, PairSums sums, boolean listed) {
    String count = phrases.text("review.cell", sums.times(), sums.offered());
    if (sums.times() == 0) {
      return new ConfusionTableView.Cell("none", taken.answer(), count, null);
    }
    boolean right = taken.pair().isRight();
    String kind = right ? "right" : listed ? "listed" : "taken";
    String share = phrases.wholePercent((double) sums.times() / sums.offered());
    String says =
        phrases.text(
            right ? "review.cell-known" : "review.cell-taken",
            share,
            count,
            taken.shown().name(),
            taken.answer().name());
    MarkPair pair = taken.pair();
    Linked given = new Linked(share, says, taken.answers().taken(pair.shown(), pair.answered()));
    return new ConfusionTableView.Cell(kind, taken.answer(), count, given);
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
