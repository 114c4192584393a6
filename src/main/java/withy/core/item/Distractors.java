package withy.core.item;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import withy.core.scenario.Scenario;

/**
 * The wrong options of an item: the answers to which beliefs lead. Where several beliefs lead to
 * the same one, it names one of them by chance, among those about the concept that is measured if
 * there are such, so that over many items the evidence leans to none.
 */
final class Distractors {
  /** With the key, as many options as a learner takes in at a glance; ours, no source. */
  static final int MOST = 4;

  private static final Map<Form, List<Misconception>> BELIEFS = beliefs();

  private final Task task;
  private final Scenario scenario;
  private final Map<String, List<Misconception>> ways = new LinkedHashMap<>();

  private Distractors(Task task, Scenario scenario) {
    this.task = task;
    this.scenario = scenario;
  }

  /** All wrong answers to which beliefs lead, each with the beliefs that do. */
  static Distractors of(Task task, Form form, Scenario scenario, String key) {
    Distractors distractors = new Distractors(task, scenario);
    for (Misconception each : BELIEFS.getOrDefault(form, List.of())) {
      @Nullable String value = each.answerOrNull(form, scenario);
      if (value != null && !value.equals(key)) {
        distractors.ways.computeIfAbsent(value, none -> new ArrayList<>(4)).add(each);
      }
    }
    return distractors;
  }

  Distractors without(List<String> values) {
    ways.keySet().removeAll(values);
    return this;
  }

  /** The values of all of them, in the order of the beliefs. */
  List<String> values() {
    return List.copyOf(ways.keySet());
  }

  int count() {
    return ways.size();
  }

  /** The options in an order of chance, at most {@link #MOST}; texts by value. */
  List<Option> options(Function<String, Message> text) {
    List<String> values = new ArrayList<>(ways.keySet());
    while (values.size() > MOST) {
      values.remove(task.chance().below(values.size()));
    }
    List<Option> options = new ArrayList<>(values.size());
    for (String value : values) {
      Misconception belief = one(task, ways.getOrDefault(value, List.of()));
      options.add(new Option(value, text.apply(value), belief, belief.mistook(scenario)));
    }
    return options;
  }

  /** Where the beliefs lead as numbers, each number with one of the beliefs that lead to it. */
  List<Quantity.Belief> numbers() {
    List<Quantity.Belief> numbers = new ArrayList<>();
    for (Map.Entry<String, List<Misconception>> each : ways.entrySet()) {
      Misconception belief = one(task, each.getValue());
      numbers.add(
          new Quantity.Belief(Double.parseDouble(each.getKey()), belief, belief.mistook(scenario)));
    }
    return numbers;
  }

  /** One of several beliefs that lead the same way, rather one about what is measured. */
  static Misconception one(Task task, List<Misconception> beliefs) {
    List<Misconception> near = new ArrayList<>(beliefs.size());
    for (Misconception each : beliefs) {
      if (each.concepts().contains(task.concept())) {
        near.add(each);
      }
    }
    return task.chance().pick(near.isEmpty() ? beliefs : near);
  }

  private static Map<Form, List<Misconception>> beliefs() {
    Map<Form, List<Misconception>> beliefs = new EnumMap<>(Form.class);
    for (Form form : Form.values()) {
      List<Misconception> speaking = new ArrayList<>();
      for (Misconception each : Misconception.values()) {
        if (each.speaksOf(form)) {
          speaking.add(each);
        }
      }
      beliefs.put(form, speaking);
    }
    return beliefs;
  }
}
