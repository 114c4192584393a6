package withy.core.light;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import withy.core.light.LightNotationException.Reason;

/**
 * The lengths that this project takes where a character does not state them. P is the period, n the
 * flashes or eclipses of one period, k the colours; lengths are rounded to 0.1 s.
 *
 * <table>
 * <caption>Defaults</caption>
 * <tr><th>class</th><th>lengths</th><th>why</th></tr>
 * <tr><td>Fl, FFl</td><td>flash P/10, from 0.3 s to 1.0 s</td>
 *   <td>NOAA ENC data: 0.3 of 2.5, 0.4 of 4, 0.6 of 6, 1.0 of 10</td></tr>
 * <tr><td>Fl(n)</td><td>a flash every P/5 or P/(2n-1), the longer time, down to 0.5 s, 1 s to 3 s;
 *   flash 0.4 s at 1 s, else 0.5 s, of a pair half of the time up to 1.0 s</td>
 *   <td>US rhythm 0.4/0.6/0.4/3.6 of Fl(2)5s; the long eclipse always outlasts the short</td></tr>
 * <tr><td>Fl(n+m)</td><td>flash 15 % of P, gaps 21 % of P, shared by n; three gaps between groups
 *   </td><td>US rhythm 0.3/0.4/0.3/1.2/0.3/3.5 of Fl(2+1)6s</td></tr>
 * <tr><td>LFl, LFl(n)</td><td>flash 2 s, gap 2 s</td><td>the shortest long flash (S-12)</td></tr>
 * <tr><td>Oc</td><td>eclipse P/4</td><td>NOAA ENC data: 1.0 of 4</td></tr>
 * <tr><td>Oc(n)</td><td>eclipse and short light P/(3n), at most 1 s</td>
 *   <td>S-12: 1/1/1/10 of Oc(2)13s</td></tr>
 * <tr><td>Oc(n+m)</td><td>eclipse and short light 30 % of P shared by n; the rest of the light in
 *   equal parts between the groups</td><td>NGA Pub 113: Oc(2+1)12s</td></tr>
 * <tr><td>Q</td><td>0.3 s every 1.0 s; where a group does not fit, 0.24 s every 0.8 s</td>
 *   <td>60 a minute (33 CFR 62.45), NOAA ENC data 0.3/0.7</td></tr>
 * <tr><td>VQ</td><td>0.2 s every 0.5 s; else 0.16 s every 0.4 s</td><td>120 a minute is usual</td></tr>
 * <tr><td>UQ</td><td>0.1 s every 0.25 s</td><td>240 to 300 is usual</td></tr>
 * <tr><td>IQ, IVQ, IUQ</td><td>as many flashes as fill 60 % of P, at least 4, not 9</td>
 *   <td>nine would be a group</td></tr>
 * <tr><td>+LFl</td><td>2 s, at the next beat</td><td>follows at once</td></tr>
 * <tr><td>Mo</td><td>one or two signs: dot 0.4, gap 0.6, dash 2.0; more, or where that does not fit:
 *   0.4, 0.5, 1.2; three gaps between letters</td>
 *   <td>NOAA ENC data Mo(A)8s; NGA Pub 111 Mo(U)15s</td></tr>
 * <tr><td>Al</td><td>P/k each</td><td></td></tr>
 * <tr><td>Al.Fl</td><td>as Fl in each k-th of P; with a group as Fl(n)</td><td></td></tr>
 * <tr><td>Al.Oc</td><td>eclipse 1/3 of each n-th of P</td>
 *   <td>SN.1/Circ.259: 1.0/0.5/1.0/0.5 of Al.Oc.BuY.3s</td></tr>
 * </table>
 *
 * <p>Periods that are not stated are in {@link DefaultPeriods}.
 */
final class DefaultTimings {

  private static final int LONG_FLASH = 2000;

  private final Rhythm rhythm;
  private final int period;
  private final int colours;

  private DefaultTimings(Rhythm rhythm, int period, int colours) {
    this.rhythm = rhythm;
    this.period = period;
    this.colours = colours;
  }

  /** The beats of a rhythm with this period and number of colours; not for fixed, nor Al. */
  static List<Beat> beats(Rhythm rhythm, int period, int colours) {
    return new DefaultTimings(rhythm, period, colours).beats();
  }

  private List<Beat> beats() {
    return switch (rhythm.lightClass()) {
      case ISOPHASE -> List.of(beat(period - period / 2));
      case OCCULTING -> List.of(beat(period - tenth(period / 4)));
      case GROUP_OCCULTING -> groupOcculting();
      case COMPOSITE_GROUP_OCCULTING -> compositeOcculting();
      case FLASHING -> List.of(beat(flash(period)));
      case GROUP_FLASHING -> groupFlashing();
      case COMPOSITE_GROUP_FLASHING -> compositeFlashing();
      case LONG_FLASHING -> List.of(beat(LONG_FLASH));
      case GROUP_LONG_FLASHING -> spaced(rhythm.count(), LONG_FLASH, 2 * LONG_FLASH);
      case QUICK -> List.of(beat(period * 3 / 10));
      case VERY_QUICK, ULTRA_QUICK -> List.of(beat(period * 2 / 5));
      case GROUP_QUICK -> quick(1000, 800, 300, 300);
      case GROUP_VERY_QUICK -> quick(500, 400, 200, 200);
      case GROUP_QUICK_AND_LONG_FLASH -> quick(1000, 800, 300, LONG_FLASH);
      case GROUP_VERY_QUICK_AND_LONG_FLASH -> quick(500, 400, 200, LONG_FLASH);
      case INTERRUPTED_QUICK -> interrupted(1000, 300);
      case INTERRUPTED_VERY_QUICK -> interrupted(500, 200);
      case INTERRUPTED_ULTRA_QUICK -> interrupted(250, 100);
      case MORSE -> morse();
      case FIXED_AND_FLASHING -> flashingOrGroup();
      case ALTERNATING_FLASHING -> alternatingFlashing();
      case ALTERNATING_OCCULTING -> alternatingOcculting();
      case FIXED, ALTERNATING -> throw new IllegalArgumentException("no beats in " + rhythm);
    };
  }

  private List<Beat> groupOcculting() {
    int unit = Math.min(1000, tenthDown(period / (3 * rhythm.count())));
    List<Beat> beats = new ArrayList<>();
    beats.add(new Beat(rest((2 * rhythm.count() - 1) * unit), unit));
    beats.addAll(Collections.nCopies(rhythm.count() - 1, new Beat(unit, unit)));
    return beats;
  }

  private List<Beat> compositeOcculting() {
    int count = rhythm.count();
    int groups = rhythm.group().size();
    int unit = tenthDown(period * 3 / (10 * count));
    int between = rest(unit * (2 * count - groups)) / groups;
    List<Beat> beats = new ArrayList<>();
    for (int number : rhythm.group()) {
      beats.add(new Beat(between, unit));
      beats.addAll(Collections.nCopies(number - 1, new Beat(unit, unit)));
    }
    Beat first = beats.get(0);
    int left = period - Beat.sum(beats, Beat::cycle);
    beats.set(0, new Beat(first.light() + left, first.dark()));
    return beats;
  }

  private List<Beat> flashingOrGroup() {
    return rhythm.count() < 2 ? List.of(beat(flash(period))) : groupFlashing();
  }

  private List<Beat> groupFlashing() {
    int count = rhythm.count();
    int cycle = period / Math.max(5, 2 * count - 1) / 500 * 500;
    cycle = Math.max(1000, Math.min(3000, cycle));
    int flash = count == 2 ? Math.min(1000, tenthDown(cycle / 2)) : 500;
    return spaced(count, cycle == 1000 ? 400 : flash, cycle);
  }

  private List<Beat> compositeFlashing() {
    int count = rhythm.count();
    int flash = Math.min(1000, tenth(period * 3 / (20 * count)));
    int gap = Math.min(1500, tenth(period * 21 / (100 * count)));
    List<Beat> beats = new ArrayList<>();
    for (int number : rhythm.group()) {
      beats.addAll(Collections.nCopies(number - 1, new Beat(flash, gap)));
      beats.add(new Beat(flash, 3 * gap));
    }
    return closed(beats);
  }

  private List<Beat> quick(int cycle, int faster, int flash, int last) {
    List<Beat> usual = quick(cycle - flash, flash, last);
    boolean fits = Beat.sum(usual, Beat::cycle) + (cycle - flash) / 2 < period;
    int shorter = flash * faster / cycle;
    return closed(fits ? usual : quick(faster - shorter, shorter, last));
  }

  private List<Beat> quick(int gap, int flash, int last) {
    List<Beat> beats = new ArrayList<>(Collections.nCopies(rhythm.count(), new Beat(flash, gap)));
    if (last == LONG_FLASH) {
      beats.add(new Beat(last, gap));
    }
    return beats;
  }

  private List<Beat> interrupted(int cycle, int flash) {
    int count = Math.max(4, (period * 3 / 5 + cycle - 1) / cycle);
    return spaced(count == 9 ? 8 : count, flash, cycle);
  }

  private List<Beat> morse() {
    String signs = MorseCode.signs(rhythm.morse());
    List<Beat> slow = signs(signs, 600, 2000);
    boolean few = signs.length() <= 2 && Beat.sum(slow, Beat::cycle) + 600 <= period;
    return closed(few ? slow : signs(signs, 500, 1200));
  }

  private static List<Beat> signs(String signs, int gap, int dash) {
    List<Beat> beats = new ArrayList<>();
    for (char sign : signs.toCharArray()) {
      if (sign == ' ') {
        Beat before = beats.remove(beats.size() - 1);
        beats.add(new Beat(before.light(), 3 * gap));
      } else {
        beats.add(new Beat(sign == '.' ? 400 : dash, gap));
      }
    }
    return beats;
  }

  private List<Beat> alternatingFlashing() {
    if (rhythm.group().size() > 1) {
      return compositeFlashing();
    }
    return rhythm.count() > 1
        ? groupFlashing()
        : parts(colours).stream().map(part -> split(part, flash(part))).toList();
  }

  private List<Beat> alternatingOcculting() {
    List<Integer> parts = parts(Math.max(rhythm.count(), colours));
    return parts.stream().map(part -> split(part, part - tenth(part / 3))).toList();
  }

  /** The period in so many parts, equal to the millisecond. */
  private List<Integer> parts(int count) {
    return parts(period, count);
  }

  static List<Integer> parts(int period, int count) {
    List<Integer> parts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      parts.add((int) ((long) period * (i + 1) / count - (long) period * i / count));
    }
    return parts;
  }

  private List<Beat> spaced(int count, int flash, int cycle) {
    return closed(new ArrayList<>(Collections.nCopies(count, new Beat(flash, cycle - flash))));
  }

  /** The beats with the last eclipse drawn out, or cut, to the end of the period. */
  private List<Beat> closed(List<Beat> beats) {
    int light = beats.remove(beats.size() - 1).light();
    beats.add(new Beat(light, rest(Beat.sum(beats, Beat::cycle) + light)));
    return beats;
  }

  private Beat beat(int light) {
    return split(period, light);
  }

  private Beat split(int whole, int light) {
    if (light <= 0 || light >= whole) {
      throw doesNotFit(rhythm, period);
    }
    return new Beat(light, whole - light);
  }

  private int rest(int used) {
    if (used >= period) {
      throw doesNotFit(rhythm, period);
    }
    return period - used;
  }

  static LightNotationException doesNotFit(Rhythm rhythm, int period) {
    return new LightNotationException(Reason.DOES_NOT_FIT, rhythm.notation(), Seconds.text(period));
  }

  private static int flash(int whole) {
    return Math.max(300, Math.min(1000, tenth(whole / 10)));
  }

  private static int tenth(int millis) {
    return Math.max(100, (millis + 50) / 100 * 100);
  }

  private static int tenthDown(int millis) {
    return Math.max(1, millis < 100 ? millis : millis / 100 * 100);
  }
}
