package withy.core.light;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import withy.core.light.LightNotationException.Reason;

/**
 * A class of light with its group or its letters: {@code Fl(2+1)}, {@code Q(6)+LFl}, {@code Mo(A)}.
 *
 * @param lightClass the class
 * @param group flashes, of occulting lights eclipses, in each group of a period; empty without one
 * @param morse the letters of a Morse light, else empty
 */
public record Rhythm(LightClass lightClass, List<Integer> group, String morse) {

  private static final int MOST_IN_GROUP = 30;

  public Rhythm {
    group = List.copyOf(group);
    if (lightClass.form().takesOne() && group.equals(List.of(1))) {
      group = List.of();
    }
    checkGroup(lightClass, group);
    if (lightClass == LightClass.MORSE || !morse.isEmpty()) {
      morse = MorseCode.checked(morse);
    }
    if (lightClass != LightClass.MORSE && !morse.isEmpty()) {
      throw new LightNotationException(Reason.GROUP_NOT_TAKEN, lightClass.abbreviation(), morse);
    }
  }

  static Rhythm of(LightClass lightClass, List<Integer> group) {
    return new Rhythm(lightClass, group, "");
  }

  static Rhythm ofMorse(String letters) {
    return new Rhythm(LightClass.MORSE, List.of(), letters);
  }

  /**
   * The rhythm that someone tells from a timeline, by the definitions of the classes; empty when
   * none fits. An isophase light is told before a quick one, and where flashes of one rate may be a
   * group or an interrupted sequence, three, nine and whatever takes less than half of the period
   * are a group.
   */
  public static Optional<Rhythm> classify(LightTimeline timeline) {
    return Classifier.classify(timeline);
  }

  private static void checkGroup(LightClass lightClass, List<Integer> group) {
    boolean allowed =
        switch (lightClass.form()) {
          case NONE, SINGLE, LETTERS -> group.isEmpty();
          case GROUP -> group.size() <= 1;
          case ANY_GROUP -> group.size() <= 1;
          case COMPOSITE, ANY -> true;
        };
    if (!allowed) {
      throw new LightNotationException(
          Reason.GROUP_NOT_TAKEN, lightClass.abbreviation(), joined(group));
    }
    checkNumbers(lightClass, group);
  }

  private static void checkNumbers(LightClass lightClass, List<Integer> group) {
    boolean composite = lightClass.form() == LightClass.Form.COMPOSITE;
    boolean needed = composite || lightClass.form() == LightClass.Form.GROUP;
    if (needed && group.size() < (composite ? 2 : 1)) {
      throw new LightNotationException(Reason.GROUP_MISSING, lightClass.abbreviation());
    }
    int least = lightClass.form() == LightClass.Form.GROUP ? 2 : 1;
    int total = group.stream().mapToInt(Integer::intValue).reduce(0, Rhythm::saturated);
    for (int number : group) {
      if (number < least || number > MOST_IN_GROUP || total > MOST_IN_GROUP) {
        throw new LightNotationException(
            Reason.GROUP_NUMBER, least, MOST_IN_GROUP, Math.max(number, Math.min(total, 999)));
      }
    }
    if (group.size() > 1 && group.stream().distinct().count() == 1) {
      throw new LightNotationException(Reason.GROUPS_ALIKE, joined(group));
    }
  }

  private static int saturated(int sum, int number) {
    return Math.min(sum + Math.min(number, 1000), 1_000_000);
  }

  /** All flashes, or eclipses, of the groups of one period; 0 without a group. */
  int count() {
    return group.stream().mapToInt(Integer::intValue).sum();
  }

  /** The rhythm as charts write it: {@code Fl(2+1)}. */
  public String notation() {
    String brackets = lightClass == LightClass.MORSE ? morse : joined(group);
    return lightClass.abbreviation()
        + (brackets.isEmpty() ? "" : "(" + brackets + ")")
        + (lightClass.endsWithLongFlash() ? "+LFl" : "");
  }

  private static String joined(List<Integer> group) {
    return group.stream().map(String::valueOf).collect(Collectors.joining("+"));
  }
}
