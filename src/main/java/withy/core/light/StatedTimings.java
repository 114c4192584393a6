package withy.core.light;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightNotationException.Reason;

/**
 * Lengths of light and eclipse as a text states them, before the class says what they mean.
 *
 * @param lengths in the order stated
 */
record StatedTimings(List<Length> lengths) {

  StatedTimings {
    lengths = List.copyOf(lengths);
  }

  /** One length; colour null where the text leaves it to the character. */
  record Length(int millis, boolean dark, @Nullable LightColour colour) {}

  /**
   * The phases of one period. Colours come by turns in an alternating light; what a list calls the
   * eclipse of a fixed and flashing light is its steady light. The last light or eclipse may be
   * left out where the period is stated.
   */
  List<Phase> phases(Rhythm rhythm, List<LightColour> colours, OptionalInt period) {
    List<Phase> phases = new ArrayList<>();
    int lights = 0;
    for (Length length : completed(rhythm, period)) {
      LightColour colour =
          rhythm.lightClass().alternates() ? colours.get(lights % colours.size()) : colours.get(0);
      if (!agrees(
          length.colour(), colour, rhythm.lightClass().alternates() ? List.of() : colours)) {
        throw new LightNotationException(Reason.TIMINGS_COLOURS, rhythm.notation());
      }
      phases.add(phase(rhythm.lightClass(), colour, length));
      lights += length.dark() ? 0 : 1;
    }
    return phases;
  }

  private static boolean agrees(
      @Nullable LightColour stated, LightColour due, List<LightColour> sectors) {
    return stated == null || stated == due || sectors.contains(stated);
  }

  private static Phase phase(LightClass lightClass, LightColour colour, Length length) {
    if (lightClass == LightClass.FIXED_AND_FLASHING) {
      return length.dark()
          ? Phase.light(colour, length.millis())
          : Phase.bright(colour, length.millis());
    }
    return length.dark() ? Phase.eclipse(length.millis()) : Phase.light(colour, length.millis());
  }

  private List<Length> completed(Rhythm rhythm, OptionalInt period) {
    long sum = lengths.stream().mapToLong(Length::millis).sum();
    boolean first = lengths.get(0).dark();
    boolean last = lengths.get(lengths.size() - 1).dark();
    boolean open = first == last && rhythm.lightClass() != LightClass.ALTERNATING;
    if (!open || period.isEmpty() || sum >= period.getAsInt()) {
      return lengths;
    }
    List<Length> completed = new ArrayList<>(lengths);
    completed.add(new Length((int) (period.getAsInt() - sum), !last, null));
    return completed;
  }
}
