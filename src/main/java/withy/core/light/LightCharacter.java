package withy.core.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A light as a chart states it: its rhythm, colours and period, and if stated its elevation, ranges
 * and the lengths of its flashes and eclipses. One that contradicts itself cannot be made.
 *
 * @param rhythm class, group, letters
 * @param colours of an alternating light the colours in turn, else one colour or those of its
 *     sectors; white where none is written
 * @param periodMillis the period as stated, or as the stated timings add up to
 * @param elevation above the level the chart names
 * @param ranges nominal ranges in the order stated
 * @param timings the phases of one period as stated, in the first colour of a sectored light; empty
 *     where none is stated
 */
public record LightCharacter(
    Rhythm rhythm,
    List<LightColour> colours,
    OptionalInt periodMillis,
    Optional<Elevation> elevation,
    List<NominalRange> ranges,
    List<Phase> timings) {

  private static final int NOMINAL_MILLIS = 1000;

  /**
   * @throws LightNotationException when colours, period or timings contradict each other or the
   *     class
   */
  public LightCharacter {
    colours = List.copyOf(colours);
    ranges = List.copyOf(ranges);
    timings = List.copyOf(timings);
    CharacterRules.checkColours(rhythm, colours, ranges);
    CharacterRules.checkPeriod(rhythm, periodMillis);
    if (!timings.isEmpty()) {
      periodMillis = CharacterRules.checkTimings(rhythm, colours, periodMillis, timings);
    }
    CharacterRules.checkTimeline(
        rhythm,
        colours.size(),
        timings.isEmpty(),
        timeline(rhythm, colours, periodMillis, timings));
  }

  /**
   * Reads a light character as charts, light lists and data write it; {@link NotationParser} gives
   * the grammar.
   *
   * @throws LightNotationException when the text is none, or contradicts itself
   */
  public static LightCharacter parse(String text) {
    return NotationParser.parse(text);
  }

  /** A light of one colour; the group is empty for a class that takes none. */
  public static LightCharacter of(
      LightClass lightClass, List<Integer> group, LightColour colour, OptionalInt periodMillis) {
    return of(new Rhythm(lightClass, group, ""), List.of(colour), periodMillis);
  }

  /** A light of one colour of a class without a group. */
  public static LightCharacter of(
      LightClass lightClass, LightColour colour, OptionalInt periodMillis) {
    return of(lightClass, List.of(), colour, periodMillis);
  }

  /** A light that shows letters of the Morse code. */
  public static LightCharacter ofMorse(
      String letters, LightColour colour, OptionalInt periodMillis) {
    return of(Rhythm.ofMorse(letters), List.of(colour), periodMillis);
  }

  /** A light with a rhythm and colours, nothing else stated. */
  public static LightCharacter of(
      Rhythm rhythm, List<LightColour> colours, OptionalInt periodMillis) {
    return new LightCharacter(
        rhythm, colours, periodMillis, Optional.empty(), List.of(), List.of());
  }

  public LightClass lightClass() {
    return rhythm.lightClass();
  }

  /** The numbers of the group; empty without one. */
  public List<Integer> group() {
    return rhythm.group();
  }

  /** The letters of a Morse light, else empty. */
  public String morse() {
    return rhythm.morse();
  }

  /** The only colour, or the first. */
  public LightColour colour() {
    return colours.get(0);
  }

  /** Whether its colours are those of sectors, each seen from elsewhere. */
  public boolean sectored() {
    return colours.size() > 1 && !lightClass().alternates();
  }

  /**
   * How far one of its colours is seen; empty when not stated. Of two ranges for three colours the
   * first belongs to the first colour, the second to the last, and the others lie between (CHS
   * Chart 1 P 16).
   */
  public Optional<MileSpan> rangeOf(LightColour colour) {
    return MileSpan.of(this, colour);
  }

  /** The character alone, as this project always writes it: {@code Fl(2+1) R 10s}. */
  public String shortNotation() {
    return NotationWriter.character(this);
  }

  /** Everything stated, so that reading it gives an equal character: {@code Fl W 4s 21m 15M}. */
  public String notation() {
    return NotationWriter.everything(this);
  }

  /** What the light shows in a period; of a sectored light, in its first colour. */
  public LightTimeline timeline() {
    return timeline(rhythm, colours, periodMillis, timings);
  }

  private static LightTimeline timeline(
      Rhythm rhythm, List<LightColour> colours, OptionalInt stated, List<Phase> timings) {
    if (!timings.isEmpty()) {
      return new LightTimeline(timings, false);
    }
    if (rhythm.lightClass() == LightClass.FIXED) {
      return new LightTimeline(List.of(Phase.light(colours.get(0), NOMINAL_MILLIS)), false);
    }
    int period = stated.orElseGet(() -> DefaultPeriods.of(rhythm, colours.size()));
    boolean assumed = stated.isEmpty() || rhythm.lightClass() != LightClass.ISOPHASE;
    return new LightTimeline(phases(rhythm, colours, period), assumed);
  }

  private static List<Phase> phases(Rhythm rhythm, List<LightColour> colours, int period) {
    if (rhythm.lightClass() == LightClass.ALTERNATING) {
      List<Phase> phases = new ArrayList<>();
      for (int part : DefaultTimings.parts(period, colours.size())) {
        phases.add(Phase.light(colours.get(phases.size()), part));
      }
      return phases;
    }
    List<Phase> phases = new ArrayList<>();
    for (Beat beat : DefaultTimings.beats(rhythm, period, colours.size())) {
      LightColour colour =
          rhythm.lightClass().alternates()
              ? colours.get(phases.size() / 2 % colours.size())
              : colours.get(0);
      boolean bright = rhythm.lightClass() == LightClass.FIXED_AND_FLASHING;
      phases.add(bright ? Phase.bright(colour, beat.light()) : Phase.light(colour, beat.light()));
      phases.add(bright ? Phase.light(colour, beat.dark()) : Phase.eclipse(beat.dark()));
    }
    return phases;
  }
}
