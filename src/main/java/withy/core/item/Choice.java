package withy.core.item;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import withy.core.Chance;

/**
 * One of several options is right.
 *
 * @param options in the order in which they are shown
 * @param key the value of the one option that is right
 */
public record Choice(List<Option> options, String key) implements Answer {
  /** The words of an option that is a letter on the chart. */
  static final String LETTERED = "option.track";

  /**
   * @throws IllegalArgumentException if options repeat, or the key is not the one without a belief
   */
  public Choice {
    options = List.copyOf(options);
    List<String> right = new ArrayList<>();
    LinkedHashSet<String> values = new LinkedHashSet<>();
    for (Option each : options) {
      values.add(each.value());
      if (each.misconception() == null) {
        right.add(each.value());
      }
    }
    if (values.size() != options.size() || options.size() < 2) {
      throw new IllegalArgumentException("a choice needs two distinct options");
    }
    if (!right.equals(List.of(key))) {
      throw new IllegalArgumentException("the key " + key + " is not the one right of " + right);
    }
  }

  /** The choice between the right option and wrong ones. */
  static Choice of(Option right, List<Option> wrong) {
    List<Option> options = new ArrayList<>(wrong);
    options.add(right);
    return new Choice(options, right.value());
  }

  /**
   * The option of a value.
   *
   * @throws IllegalArgumentException if there is no such option
   */
  public Option option(String value) {
    return find(value)
        .orElseThrow(
            () -> new IllegalArgumentException("the item offers no option '" + value + "'"));
  }

  private Optional<Option> find(String value) {
    for (Option each : options) {
      if (each.value().equals(value)) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }

  @Override
  public boolean accepts(String given) {
    return find(given).isPresent();
  }

  @Override
  public Grade grade(String given) {
    Option option = option(given);
    return new Grade(option.misconception(), option.mistook());
  }

  @Override
  public Message text(String given) {
    return option(given).text();
  }

  @Override
  public Optional<String> led(Misconception belief) {
    for (Option each : options) {
      if (each.misconception() == belief) {
        return Optional.of(each.value());
      }
    }
    return Optional.empty();
  }

  @Override
  public List<String> foreseen() {
    List<String> values = new ArrayList<>(options.size());
    for (Option each : options) {
      values.add(each.value());
    }
    return values;
  }

  /** Tracks stand in the order of their letters, which chance has dealt already. */
  @Override
  public Choice shuffled(Chance chance) {
    if (options.stream().allMatch(each -> each.text().key().equals(LETTERED))) {
      return new Choice(options.stream().sorted(Comparator.comparing(Option::value)).toList(), key);
    }
    return new Choice(chance.shuffled(options), key);
  }
}
