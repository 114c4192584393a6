package withy.core.item;

import java.util.List;
import withy.core.scenario.Scenario;

/**
 * An item before what it offers is put in order.
 *
 * @param concepts the first is the one that it measures
 */
record Draft(
    Form form,
    List<Concept> concepts,
    Scenario scenario,
    Message prompt,
    Answer answer,
    Message explanation) {

  /** The draft of a choice between the right option and those that beliefs lead to. */
  Draft(
      Form form,
      List<Concept> concepts,
      Scenario scenario,
      Message prompt,
      Option right,
      List<Option> wrong,
      Message explanation) {
    this(form, concepts, scenario, prompt, Choice.of(right, wrong), explanation);
  }

  Item item(Task task, long seed, int index) {
    return new Item(
        form, seed, index, concepts, scenario, prompt, answer.shuffled(task.chance()), explanation);
  }
}
