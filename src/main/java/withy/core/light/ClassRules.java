package withy.core.light;

import java.util.List;
import java.util.function.ToIntFunction;
import withy.core.light.LightNotationException.Reason;

/**
 * What each class demands of the lengths of light and eclipse (definitions of IHO S-12 and Chart 1
 * P 10, rates of IALA E-110). A timeline that breaks one is refused with the reason.
 */
final class ClassRules {

  private static final int LONG_FLASH = 2000;

  private final Rhythm rhythm;
  private final LightClass lightClass;
  private final List<Beat> beats;

  private ClassRules(Rhythm rhythm, List<Beat> beats) {
    this.rhythm = rhythm;
    this.lightClass = rhythm.lightClass();
    this.beats = beats;
  }

  /** Refuses a timeline that the rhythm does not allow; a fixed one is not asked about. */
  static void check(Rhythm rhythm, int colours, LightTimeline timeline) {
    if (rhythm.lightClass() == LightClass.ALTERNATING) {
      checkAlternating(timeline, colours);
      return;
    }
    List<Beat> beats = Beat.of(timeline);
    if (beats.isEmpty()) {
      throw new LightNotationException(Reason.TIMINGS_NOT_ALTERNATELY, rhythm.notation());
    }
    new ClassRules(rhythm, beats).check(colours);
  }

  private static void checkAlternating(LightTimeline timeline, int colours) {
    if (timeline.phases().stream().anyMatch(Phase::dark)) {
      throw new LightNotationException(Reason.ECLIPSE_IN_ALTERNATION);
    }
    checkCount(timeline.merged().phases().size(), colours, LightClass.ALTERNATING.abbreviation());
  }

  private static void checkCount(int shown, int meant, String notation) {
    if (shown != meant) {
      throw new LightNotationException(Reason.TIMINGS_NOT_GROUP, shown, notation, meant);
    }
  }

  private void check(int colours) {
    if (lightClass != LightClass.MORSE && !lightClass.interrupted()) {
      checkCount(beats.size(), meant(colours), rhythm.notation());
    }
    switch (lightClass) {
      case ISOPHASE -> equal();
      case OCCULTING, ALTERNATING_OCCULTING -> lightLonger();
      case GROUP_OCCULTING, COMPOSITE_GROUP_OCCULTING -> groupOcculting();
      case FLASHING, FIXED_AND_FLASHING, GROUP_FLASHING, COMPOSITE_GROUP_FLASHING -> flashing();
      case LONG_FLASHING, GROUP_LONG_FLASHING -> longFlashing();
      case ALTERNATING_FLASHING -> darkLonger();
      case MORSE -> morse();
      default -> quick();
    }
  }

  private int meant(int colours) {
    int count = Math.max(1, rhythm.count());
    if (lightClass.alternates()) {
      return rhythm.count() > 1 ? count : colours;
    }
    return lightClass.endsWithLongFlash() ? count + 1 : count;
  }

  private void equal() {
    Beat beat = beats.get(0);
    if (Math.abs(beat.light() - beat.dark()) > 1) {
      throw fault(Reason.LIGHT_NOT_EQUAL_TO_DARK, beat.light(), beat.dark());
    }
  }

  private void lightLonger() {
    int light = Beat.sum(beats, Beat::light);
    int dark = Beat.sum(beats, Beat::dark);
    if (light <= dark) {
      throw named(Reason.LIGHT_NOT_LONGER, light, dark);
    }
  }

  /** The light of all together may equal the dark (S-12), but one light stands out. */
  private void groupOcculting() {
    int light = Beat.sum(beats, Beat::light);
    int dark = Beat.sum(beats, Beat::dark);
    if (light < dark) {
      throw named(Reason.LIGHT_NOT_LONGER, light, dark);
    }
    alike(beats, Beat::dark);
    apart(Beat::light);
  }

  private void flashing() {
    darkLonger();
    if (lightClass.form() != LightClass.Form.ANY_GROUP) {
      shortFlashes();
    }
    alike(beats, Beat::light);
    apart(Beat::dark);
  }

  private void longFlashing() {
    int shortest = Beat.shortest(beats, Beat::light);
    if (shortest < LONG_FLASH) {
      throw named(Reason.FLASH_TOO_SHORT, shortest);
    }
    darkLonger();
    alike(beats, Beat::light);
    apart(Beat::dark);
  }

  private void darkLonger() {
    int light = Beat.sum(beats, Beat::light);
    int dark = Beat.sum(beats, Beat::dark);
    if (light >= dark) {
      throw named(Reason.DARK_NOT_LONGER, light, dark);
    }
  }

  private void shortFlashes() {
    int longest = Beat.longest(beats, Beat::light);
    if (longest >= LONG_FLASH) {
      throw named(Reason.FLASH_TOO_LONG, longest);
    }
  }

  private void quick() {
    if (beats.size() == 1) {
      notLongerThanDark(beats);
      return;
    }
    List<Beat> turned = Beat.longestDarkLast(beats);
    boolean ends = lightClass.endsWithLongFlash();
    int last = turned.size() - 1;
    List<Beat> sequence = turned.subList(0, last);
    if (ends && turned.get(last).light() < LONG_FLASH) {
      throw named(Reason.FLASH_TOO_SHORT, turned.get(last).light());
    }
    alike(ends ? sequence : turned, Beat::light);
    notLongerThanDark(sequence);
    rate(sequence);
    new ClassRules(Rhythm.of(LightClass.GROUP_FLASHING, List.of(Math.max(2, beats.size()))), beats)
        .apart(Beat::dark);
  }

  private void notLongerThanDark(List<Beat> sequence) {
    int light = Beat.sum(sequence, Beat::light);
    int dark = Beat.sum(sequence, Beat::dark);
    if (light > dark) {
      throw named(Reason.DARK_NOT_LONGER, light, dark);
    }
  }

  private void rate(List<Beat> sequence) {
    int time = Beat.sum(sequence, Beat::cycle);
    if (!lightClass.rate().holds(sequence.size(), time)) {
      throw rateFault(rhythm, sequence.size(), time);
    }
  }

  /** Refuses flashes that come faster or slower than the class allows. */
  static void checkRate(Rhythm rhythm, int flashes, int millis) {
    boolean single = rhythm.lightClass().form() != LightClass.Form.GROUP;
    LightClass.Rate rate = rhythm.lightClass().rate();
    boolean fits =
        rhythm.lightClass().interrupted() || rate != LightClass.Rate.SLOW && !single
            ? LightClass.Rate.ANY.holds(flashes, millis)
            : rate.holds(flashes, millis);
    if (!fits) {
      throw rateFault(rhythm, flashes, millis);
    }
  }

  private static LightNotationException rateFault(Rhythm rhythm, int flashes, int millis) {
    LightClass.Rate rate = rhythm.lightClass().rate();
    String shown = Seconds.text((int) Math.min(60_000_000L * flashes / millis, 999_000));
    return new LightNotationException(
        Reason.RATE, rhythm.notation(), rate.least(), rate.most(), shown);
  }

  /** Flashes, or eclipses, of one kind may differ, but not so that they look like two kinds. */
  private void alike(List<Beat> of, ToIntFunction<Beat> part) {
    int shortest = Beat.shortest(of, part);
    int longest = Beat.longest(of, part);
    if (longest > 2 * shortest) {
      throw named(Reason.FLASHES_UNLIKE, shortest, longest);
    }
  }

  /** What lies between groups is clearly longer than what lies within them. */
  private void apart(ToIntFunction<Beat> part) {
    if (beats.size() > 1 && !Grouping.shows(beats, part, rhythm.group())) {
      throw new LightNotationException(Reason.GROUPS_NOT_APART, rhythm.notation());
    }
  }

  private void morse() {
    if (!Grouping.shows(beats, rhythm.morse())) {
      throw new LightNotationException(Reason.LETTERS_NOT_SHOWN, rhythm.notation());
    }
  }

  private static LightNotationException fault(Reason reason, int one, int other) {
    return new LightNotationException(reason, Seconds.text(one), Seconds.text(other));
  }

  private LightNotationException named(Reason reason, int millis) {
    return new LightNotationException(reason, rhythm.notation(), Seconds.text(millis));
  }

  private LightNotationException named(Reason reason, int one, int other) {
    return new LightNotationException(
        reason, rhythm.notation(), Seconds.text(one), Seconds.text(other));
  }
}
