package withy.core.light;

import static withy.core.light.LightClass.ALTERNATING;
import static withy.core.light.LightClass.ALTERNATING_FLASHING;
import static withy.core.light.LightClass.ALTERNATING_OCCULTING;
import static withy.core.light.LightClass.FIXED;
import static withy.core.light.LightClass.FIXED_AND_FLASHING;
import static withy.core.light.LightClass.FLASHING;
import static withy.core.light.LightClass.INTERRUPTED_QUICK;
import static withy.core.light.LightClass.INTERRUPTED_ULTRA_QUICK;
import static withy.core.light.LightClass.INTERRUPTED_VERY_QUICK;
import static withy.core.light.LightClass.ISOPHASE;
import static withy.core.light.LightClass.LONG_FLASHING;
import static withy.core.light.LightClass.MORSE;
import static withy.core.light.LightClass.OCCULTING;
import static withy.core.light.LightClass.QUICK;
import static withy.core.light.LightClass.ULTRA_QUICK;
import static withy.core.light.LightClass.VERY_QUICK;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A way to write a class, in parts that may run together or stand apart: {@code QkFl}, {@code Qk.
 * Fl.} Newer forms are those of Chart 1 P 10, older ones of US and British lists before them.
 *
 * @param parts letters in small
 * @param lightClass the class without a group
 */
record ClassSpelling(List<String> parts, LightClass lightClass) {

  private static final String GROUP = "gp";

  /** Longer spellings first, so that {@code Fl} is not read as {@code F} and something else. */
  private static final List<ClassSpelling> ALL =
      Stream.of(
              spelt("f", FIXED),
              spelt("f fl", FIXED_AND_FLASHING),
              spelt("oc", OCCULTING),
              spelt("occ", OCCULTING),
              spelt("iso", ISOPHASE),
              spelt("e int", ISOPHASE),
              spelt("fl", FLASHING),
              spelt("l fl", LONG_FLASHING),
              spelt("q", QUICK),
              spelt("qk fl", QUICK),
              spelt("i q", INTERRUPTED_QUICK),
              spelt("int q", INTERRUPTED_QUICK),
              spelt("i qk fl", INTERRUPTED_QUICK),
              spelt("int qk fl", INTERRUPTED_QUICK),
              spelt("v q", VERY_QUICK),
              spelt("v qk fl", VERY_QUICK),
              spelt("i v q", INTERRUPTED_VERY_QUICK),
              spelt("int v q", INTERRUPTED_VERY_QUICK),
              spelt("int v qk fl", INTERRUPTED_VERY_QUICK),
              spelt("u q", ULTRA_QUICK),
              spelt("u qk fl", ULTRA_QUICK),
              spelt("i u q", INTERRUPTED_ULTRA_QUICK),
              spelt("int u qk fl", INTERRUPTED_ULTRA_QUICK),
              spelt("mo", MORSE),
              spelt("al", ALTERNATING),
              spelt("alt", ALTERNATING),
              spelt("al fl", ALTERNATING_FLASHING),
              spelt("alt fl", ALTERNATING_FLASHING),
              spelt("al oc", ALTERNATING_OCCULTING),
              spelt("al occ", ALTERNATING_OCCULTING),
              spelt("alt oc", ALTERNATING_OCCULTING),
              spelt("alt occ", ALTERNATING_OCCULTING))
          .sorted(Comparator.comparingInt(ClassSpelling::length).reversed())
          .toList();

  private static ClassSpelling spelt(String parts, LightClass lightClass) {
    return new ClassSpelling(List.of(parts.split(" ")), lightClass);
  }

  /** Takes the class that comes next, if one does. */
  static Optional<Found> take(TokenStream tokens) {
    for (ClassSpelling spelling : ALL) {
      TokenStream.Mark start = tokens.mark();
      boolean grouped = false;
      boolean all = true;
      for (String part : spelling.parts) {
        grouped |= tokens.takesLetters(GROUP);
        all = all && tokens.takesLetters(part);
      }
      if (all) {
        return Optional.of(new Found(spelling.lightClass, grouped));
      }
      tokens.back(start);
    }
    return Optional.empty();
  }

  private int length() {
    return String.join("", parts).length();
  }

  /** A class that was read, and whether the old word for a group stood before it. */
  record Found(LightClass lightClass, boolean grouped) {}
}
