package withy.core.light;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A nominal range of which only the bounds are known; mostly both are the same.
 *
 * @param least nautical miles
 * @param most nautical miles, not below the least
 */
public record MileSpan(BigDecimal least, BigDecimal most) {

  public MileSpan {
    if (least.compareTo(most) > 0) {
      throw new IllegalArgumentException(least + " M is more than " + most + " M");
    }
  }

  static Optional<MileSpan> of(LightCharacter light, LightColour colour) {
    List<NominalRange> ranges = light.ranges();
    int index = light.colours().indexOf(colour);
    if (ranges.isEmpty() || index < 0) {
      return Optional.empty();
    }
    if (ranges.get(0).colour() != null) {
      return ranges.stream()
          .filter(range -> range.colour() == colour)
          .findFirst()
          .map(range -> between(range, range));
    }
    boolean each = ranges.size() == light.colours().size();
    NominalRange first = ranges.get(0);
    NominalRange last = ranges.get(ranges.size() - 1);
    if (each || ranges.size() == 1) {
      NominalRange own = each ? ranges.get(index) : first;
      return Optional.of(between(own, own));
    }
    boolean atEnd = index == light.colours().size() - 1;
    return Optional.of(between(atEnd ? last : first, index == 0 ? first : last));
  }

  private static MileSpan between(NominalRange one, NominalRange other) {
    return new MileSpan(one.miles().min(other.miles()), one.miles().max(other.miles()));
  }
}
