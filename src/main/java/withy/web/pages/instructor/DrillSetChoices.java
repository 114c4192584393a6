package withy.web.pages.instructor;

import java.util.List;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.usecase.KeepDrillSet.Listed;

/** The drill sets to begin with, without those of which a practice has no item. */
final class DrillSetChoices {
  private DrillSetChoices() {}

  static List<Choice> of(List<Listed> drillSets, Practice practice) {
    return drillSets.stream()
        .filter(each -> !ItemGenerator.measurable(practice, each.set().composition()).isEmpty())
        .map(each -> new Choice(each.id(), each.set().title(), false, null))
        .toList();
  }
}
