package withy.core.light;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import withy.core.light.LightNotationException.Reason;

/** What colours, period, ranges and timings of one light character owe to each other. */
final class CharacterRules {

  private static final int SECOND = 1000;
  private static final int LONGEST_PERIOD = 300 * SECOND;

  private CharacterRules() {}

  static void checkColours(Rhythm rhythm, List<LightColour> colours, List<NominalRange> ranges) {
    if (rhythm.lightClass().alternates()) {
      checkAlternating(rhythm, colours);
    } else {
      checkSectors(rhythm, colours);
    }
    int count = ranges.size();
    if (count > 1 && count != colours.size() && (count != 2 || colours.size() == 1)) {
      throw new LightNotationException(Reason.RANGE_COUNT, count, colours.size());
    }
    for (NominalRange range : ranges) {
      LightColour colour = range.colour();
      if (colour != null && !colours.contains(colour)) {
        throw new LightNotationException(Reason.RANGE_COLOUR, colour.abbreviation());
      }
    }
  }

  private static void checkAlternating(Rhythm rhythm, List<LightColour> colours) {
    if (new LinkedHashSet<>(colours).size() < 2) {
      throw new LightNotationException(Reason.ONE_COLOUR_ALTERNATES, colours.get(0).abbreviation());
    }
    if (rhythm.count() > 1 && rhythm.count() < colours.size()) {
      throw new LightNotationException(
          Reason.COLOURS_OUTNUMBER_FLASHES, colours.size(), rhythm.count());
    }
    LightColour before = colours.get(colours.size() - 1);
    for (LightColour colour : colours) {
      if (colour == before && rhythm.lightClass() == LightClass.ALTERNATING) {
        throw twice(rhythm, colour);
      }
      before = colour;
    }
  }

  private static void checkSectors(Rhythm rhythm, List<LightColour> colours) {
    for (LightColour colour : colours) {
      if (colours.indexOf(colour) != colours.lastIndexOf(colour)) {
        throw twice(rhythm, colour);
      }
    }
  }

  private static LightNotationException twice(Rhythm rhythm, LightColour colour) {
    return new LightNotationException(
        Reason.COLOUR_TWICE, rhythm.notation(), colour.abbreviation());
  }

  static void checkPeriod(Rhythm rhythm, OptionalInt period) {
    if (period.isEmpty()) {
      return;
    }
    int millis = period.getAsInt();
    String seconds = Seconds.text(millis);
    if (rhythm.lightClass() == LightClass.FIXED) {
      throw new LightNotationException(Reason.PERIOD_NOT_TAKEN, seconds);
    }
    if (millis <= 0) {
      throw new LightNotationException(Reason.PERIOD_NOT_POSITIVE, seconds);
    }
    if (millis > LONGEST_PERIOD) {
      throw new LightNotationException(Reason.PERIOD_TOO_LONG, LONGEST_PERIOD / SECOND, seconds);
    }
    ClassRules.checkRate(rhythm, Math.max(1, rhythm.count()), millis);
  }

  /** Returns the period, which the timings give when it is not stated. */
  static OptionalInt checkTimings(
      Rhythm rhythm, List<LightColour> colours, OptionalInt period, List<Phase> timings) {
    if (rhythm.lightClass() == LightClass.FIXED) {
      throw new LightNotationException(Reason.TIMINGS_NOT_TAKEN);
    }
    long sum = timings.stream().mapToLong(Phase::millis).sum();
    int whole = (int) Math.min(sum, Integer.MAX_VALUE);
    if (period.isPresent() && period.getAsInt() != sum) {
      throw new LightNotationException(
          Reason.TIMINGS_NOT_PERIOD, Seconds.text(whole), Seconds.text(period.getAsInt()));
    }
    checkPeriod(rhythm, OptionalInt.of(whole));
    checkTimingsColours(rhythm, colours, timings);
    return OptionalInt.of(whole);
  }

  private static void checkTimingsColours(
      Rhythm rhythm, List<LightColour> colours, List<Phase> timings) {
    boolean turns = rhythm.lightClass().alternates();
    boolean bright = rhythm.lightClass() == LightClass.FIXED_AND_FLASHING;
    List<Phase> lights = new ArrayList<>(timings);
    lights.removeIf(Phase::dark);
    for (int i = 0; i < lights.size(); i++) {
      LightColour colour = colours.get(turns ? i % colours.size() : 0);
      if (lights.get(i).colour() != colour || lights.get(i).high() && !bright) {
        throw new LightNotationException(Reason.TIMINGS_COLOURS, rhythm.notation());
      }
    }
    if (bright && lights.size() < timings.size()) {
      throw new LightNotationException(Reason.TIMINGS_NOT_ALTERNATELY, rhythm.notation());
    }
  }

  /** A timeline of defaults that breaks a rule of the class means that the period is too short. */
  static void checkTimeline(Rhythm rhythm, int colours, boolean defaults, LightTimeline timeline) {
    if (rhythm.lightClass() == LightClass.FIXED) {
      return;
    }
    try {
      ClassRules.check(rhythm, colours, timeline);
    } catch (LightNotationException contradiction) {
      throw defaults
          ? DefaultTimings.doesNotFit(rhythm, timeline.periodMillis().orElse(0))
          : contradiction;
    }
  }
}
