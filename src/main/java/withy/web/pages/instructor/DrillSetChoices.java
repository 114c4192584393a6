package withy.web.pages.instructor;

import java.util.ArrayList;
import java.util.List;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.usecase.KeepDrillSet.Listed;

/** The drill sets to begin with, without those of which a practice has no item. */
final class DrillSetChoices {
  private DrillSetChoices() {}

  /** Kept ones that stand before those of the program: the newest, so that a line holds them. */
  private static final int MOST_KEPT = 6;

  /** All that a line holds. */
  static List<Choice> few(List<Listed> drillSets, Practice practice) {
    List<Listed> few = new ArrayList<>();
    drillSets.stream().filter(each -> !each.authored()).limit(MOST_KEPT).forEach(few::add);
    drillSets.stream().filter(Listed::authored).forEach(few::add);
    return of(few, practice);
  }

  static List<Choice> of(List<Listed> drillSets, Practice practice) {
    return drillSets.stream()
        .filter(each -> !ItemGenerator.measurable(practice, each.set().composition()).isEmpty())
        .map(each -> new Choice(each.id(), each.set().title(), false, null))
        .toList();
  }
}
