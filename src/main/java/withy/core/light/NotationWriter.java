package withy.core.light;

import java.util.List;
import java.util.stream.Collectors;

/** Writes a light character in the one form that this project uses. */
final class NotationWriter {

  private NotationWriter() {}

  /** Class, colours, period, a blank between them; the colour always, white too. */
  static String character(LightCharacter light) {
    String colours =
        light.colours().stream().map(LightColour::abbreviation).collect(Collectors.joining());
    String start = light.rhythm().notation() + " " + colours;
    return light.periodMillis().isPresent()
        ? start + " " + Seconds.text(light.periodMillis().getAsInt()) + "s"
        : start;
  }

  /** The character, then elevation, ranges and timings where they are stated. */
  static String everything(LightCharacter light) {
    StringBuilder all = new StringBuilder(character(light));
    light.elevation().ifPresent(elevation -> all.append(' ').append(elevation.notation()));
    if (!light.ranges().isEmpty()) {
      all.append(' ').append(ranges(light.ranges()));
    }
    if (!light.timings().isEmpty()) {
      all.append(' ').append(timings(light));
    }
    return all.toString();
  }

  private static String ranges(List<NominalRange> ranges) {
    if (ranges.get(0).colour() != null) {
      return ranges.stream().map(NominalRange::notation).collect(Collectors.joining(" "));
    }
    String separator = ranges.size() == 2 ? "-" : "/";
    return ranges.stream().map(NominalRange::notation).collect(Collectors.joining(separator)) + "M";
  }

  /** As data does: eclipses in brackets, of a fixed and flashing light the steady light. */
  private static String timings(LightCharacter light) {
    boolean bright = light.lightClass() == LightClass.FIXED_AND_FLASHING;
    return light.timings().stream()
        .map(
            phase -> {
              String seconds = Seconds.text(phase.millis());
              return (bright ? phase.high() : !phase.dark()) ? seconds : "(" + seconds + ")";
            })
        .collect(Collectors.joining("+"));
  }
}
