package withy.core.item;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/**
 * The parts from which one is chosen for a feature of a mark.
 *
 * @param parts in the order in which they are shown
 */
public record Slot(Feature feature, List<Part> parts) {
  /**
   * @throws IllegalArgumentException if parts repeat, or there are fewer than two
   */
  public Slot {
    parts = List.copyOf(parts);
    LinkedHashSet<String> values = new LinkedHashSet<>();
    for (Part each : parts) {
      values.add(each.value());
    }
    if (values.size() != parts.size() || parts.size() < 2) {
      throw new IllegalArgumentException(feature.id() + " needs two distinct parts");
    }
  }

  Optional<Part> find(String value) {
    for (Part each : parts) {
      if (each.value().equals(value)) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }

  int longest() {
    int longest = 0;
    for (Part each : parts) {
      longest = Math.max(longest, each.value().length());
    }
    return longest;
  }
}
