package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import withy.core.scenario.Scenario;

/**
 * An item before its options are put in order.
 *
 * @param concepts the first is the one that it measures
 * @param right the option that is right
 * @param wrong the options that beliefs lead to
 */
record Draft(
    Form form,
    List<Concept> concepts,
    Scenario scenario,
    Message prompt,
    Option right,
    List<Option> wrong,
    Message explanation) {

  Item item(Task task, long seed, int index) {
    List<Option> options = new ArrayList<>(wrong);
    options.add(right);
    return new Item(
        form,
        seed,
        index,
        concepts,
        scenario,
        prompt,
        task.chance().shuffled(options),
        right.value(),
        explanation);
  }
}
