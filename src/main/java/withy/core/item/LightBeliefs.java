package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;
import withy.core.light.LightClass;
import withy.core.light.LightColour;
import withy.core.light.LightNotationException;
import withy.core.light.LightTimeline;
import withy.core.light.Phase;
import withy.core.light.Rhythm;

/**
 * How beliefs read the character of a light; null where a belief says nothing of it. A reading that
 * cannot be a light at all, since its flashes would be too fast for their class, is none.
 */
final class LightBeliefs {
  private static final int SECOND = 1000;

  private LightBeliefs() {}

  static @Nullable LightCharacter compositeReadAsGroup(LightCharacter light) {
    boolean composite = light.lightClass() == LightClass.COMPOSITE_GROUP_FLASHING;
    int flashes = light.group().stream().mapToInt(Integer::intValue).sum();
    return composite ? as(light, LightClass.GROUP_FLASHING, List.of(flashes)) : null;
  }

  static @Nullable LightCharacter singleFlashUnnoticed(LightCharacter light) {
    boolean composite = light.lightClass() == LightClass.COMPOSITE_GROUP_FLASHING;
    return composite ? as(light, LightClass.GROUP_FLASHING, light.group().subList(0, 1)) : null;
  }

  static @Nullable LightCharacter occultingReadAsFlashing(LightCharacter light) {
    return switch (light.lightClass()) {
      case OCCULTING -> as(light, LightClass.FLASHING, List.of());
      case GROUP_OCCULTING -> as(light, LightClass.GROUP_FLASHING, light.group());
      case ALTERNATING_OCCULTING -> as(light, LightClass.ALTERNATING_FLASHING, light.group());
      default -> null;
    };
  }

  static @Nullable LightCharacter flashingReadAsOcculting(LightCharacter light) {
    return switch (light.lightClass()) {
      case FLASHING, LONG_FLASHING -> as(light, LightClass.OCCULTING, List.of());
      case GROUP_FLASHING -> as(light, LightClass.GROUP_OCCULTING, light.group());
      default -> null;
    };
  }

  /** Counts whole seconds from the end of the last flash, of occulting lights from the eclipse. */
  static @Nullable LightCharacter periodFromDark(LightCharacter light) {
    boolean occults =
        light.lightClass() == LightClass.OCCULTING
            || light.lightClass() == LightClass.GROUP_OCCULTING;
    if (light.periodMillis().isEmpty() || light.lightClass() == LightClass.ISOPHASE) {
      return null;
    }
    int seconds = longest(light.timeline(), !occults) / SECOND;
    return seconds == 0 ? null : lasting(light, seconds * SECOND);
  }

  static @Nullable LightCharacter isophaseAsLightOnly(LightCharacter light) {
    int period = light.periodMillis().orElse(0);
    boolean isophase = light.lightClass() == LightClass.ISOPHASE && period > 0;
    return isophase ? lasting(light, period / 2) : null;
  }

  static @Nullable LightCharacter isophaseReadAsOcculting(LightCharacter light) {
    boolean isophase = light.lightClass() == LightClass.ISOPHASE;
    return isophase ? as(light, LightClass.OCCULTING, List.of()) : null;
  }

  static @Nullable LightCharacter longFlashCounted(LightCharacter light) {
    return light.lightClass().endsWithLongFlash() ? group(light, 1) : null;
  }

  static @Nullable LightCharacter longFlashUnnoticed(LightCharacter light) {
    return light.lightClass() == LightClass.LONG_FLASHING
        ? as(light, LightClass.FLASHING, List.of())
        : light.lightClass().endsWithLongFlash() ? group(light, 0) : null;
  }

  /** The group of quick flashes alone, with some more of them. */
  private static @Nullable LightCharacter group(LightCharacter light, int more) {
    boolean quick = light.lightClass() == LightClass.GROUP_QUICK_AND_LONG_FLASH;
    LightClass group = quick ? LightClass.GROUP_QUICK : LightClass.GROUP_VERY_QUICK;
    return as(light, group, List.of(light.group().get(0) + more));
  }

  /** Rates that differ less than three to one are hard to tell (IALA E-110, 2.4). */
  static @Nullable LightCharacter rateMisjudged(LightCharacter light) {
    return switch (light.lightClass()) {
      case QUICK -> as(light, LightClass.VERY_QUICK, List.of());
      case VERY_QUICK -> as(light, LightClass.QUICK, List.of());
      case GROUP_QUICK -> as(light, LightClass.GROUP_VERY_QUICK, light.group());
      case GROUP_VERY_QUICK -> as(light, LightClass.GROUP_QUICK, light.group());
      case GROUP_QUICK_AND_LONG_FLASH ->
          as(light, LightClass.GROUP_VERY_QUICK_AND_LONG_FLASH, light.group());
      case GROUP_VERY_QUICK_AND_LONG_FLASH ->
          as(light, LightClass.GROUP_QUICK_AND_LONG_FLASH, light.group());
      default -> null;
    };
  }

  static @Nullable LightCharacter quickReadAsFlashing(LightCharacter light) {
    return switch (light.lightClass()) {
      case QUICK, VERY_QUICK -> timed(light, LightClass.FLASHING, List.of(), 2 * SECOND);
      case GROUP_QUICK, GROUP_VERY_QUICK -> as(light, LightClass.GROUP_FLASHING, light.group());
      default -> null;
    };
  }

  /** M17: twelve o'clock must be a group of twelve. */
  static @Nullable LightCharacter clockFace(LightCharacter light) {
    return switch (light.lightClass()) {
      case QUICK -> white(light, LightClass.GROUP_QUICK, 15 * SECOND);
      case VERY_QUICK -> white(light, LightClass.GROUP_VERY_QUICK, 10 * SECOND);
      default -> null;
    };
  }

  private static @Nullable LightCharacter white(LightCharacter light, LightClass as, int period) {
    return light.colour() == LightColour.WHITE ? timed(light, as, List.of(12), period) : null;
  }

  /** Counts the gaps between flashes in place of the flashes. */
  static @Nullable LightCharacter gapsCounted(LightCharacter light) {
    boolean group =
        light.lightClass() == LightClass.GROUP_FLASHING
            || light.lightClass() == LightClass.GROUP_QUICK
            || light.lightClass() == LightClass.GROUP_VERY_QUICK;
    int gaps = group ? light.group().get(0) - 1 : 0;
    return gaps < 2 ? null : as(light, light.lightClass(), List.of(gaps));
  }

  static @Nullable LightCharacter morseReadAsGroup(LightCharacter light) {
    boolean morse = light.lightClass() == LightClass.MORSE;
    int flashes = morse ? light.timeline().flashes() : 0;
    return flashes < 2 ? null : as(light, LightClass.GROUP_FLASHING, List.of(flashes));
  }

  static @Nullable LightCharacter yellowTakenForWhite(LightCharacter light) {
    return recoloured(light, LightColour.YELLOW);
  }

  /** Very short green flashes are taken for white ones (IALA E-110, section 3). */
  static @Nullable LightCharacter greenTakenForWhite(LightCharacter light) {
    return recoloured(light, LightColour.GREEN);
  }

  /** Sees only the yellow flashes of blue and yellow ones. */
  static @Nullable LightCharacter wreckTakenForSpecial(LightCharacter light) {
    boolean wreck = light.colours().equals(List.of(LightColour.BLUE, LightColour.YELLOW));
    return wreck
        ? made(
            new Rhythm(LightClass.FLASHING, List.of(), ""),
            List.of(LightColour.YELLOW),
            light.periodMillis())
        : null;
  }

  /** The character that a value stands for, with the usual lengths of its phases. */
  static LightCharacter read(String value) {
    return LightCharacter.parse(value.replace('_', ' '));
  }

  /** The value of the option, {@code Fl_R_4s}. */
  static String value(LightCharacter light) {
    return light.shortNotation().replace(' ', '_');
  }

  private static @Nullable LightCharacter recoloured(LightCharacter light, LightColour from) {
    if (!light.colours().contains(from)) {
      return null;
    }
    List<LightColour> colours = new ArrayList<>();
    for (LightColour each : light.colours()) {
      colours.add(each == from ? LightColour.WHITE : each);
    }
    return made(light.rhythm(), colours, light.periodMillis());
  }

  private static int longest(LightTimeline timeline, boolean dark) {
    int longest = 0;
    for (Phase each : timeline.merged().phases()) {
      longest = each.dark() == dark ? Math.max(longest, each.millis()) : longest;
    }
    return longest;
  }

  private static @Nullable LightCharacter as(
      LightCharacter light, LightClass lightClass, List<Integer> group) {
    return made(new Rhythm(lightClass, group, ""), light.colours(), light.periodMillis());
  }

  private static @Nullable LightCharacter timed(
      LightCharacter light, LightClass lightClass, List<Integer> group, int millis) {
    return made(new Rhythm(lightClass, group, ""), light.colours(), OptionalInt.of(millis));
  }

  private static @Nullable LightCharacter lasting(LightCharacter light, int millis) {
    return made(light.rhythm(), light.colours(), OptionalInt.of(millis));
  }

  private static @Nullable LightCharacter made(
      Rhythm rhythm, List<LightColour> colours, OptionalInt period) {
    try {
      return LightCharacter.of(rhythm, colours, period);
    } catch (LightNotationException e) {
      return null;
    }
  }
}
