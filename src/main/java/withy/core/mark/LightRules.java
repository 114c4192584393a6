package withy.core.mark;

import java.util.List;
import withy.core.light.LightCharacter;
import withy.core.light.LightClass;
import withy.core.light.LightColour;

/**
 * Which lights kinds of mark may show. IALA fixes the periods of cardinal lights, of LFl 10s and of
 * the wreck light alone; a period that is not stated passes. A light with sectors passes none.
 */
final class LightRules {
  private static final LightCharacter WRECK = LightCharacter.parse("Al.Oc BuY 3s");
  private static final List<Integer> TWO_AND_ONE = List.of(2, 1);

  private LightRules() {}

  /** A colour of a hand and any rhythm but (2+1). */
  static LightLimit lateral(Colour hand) {
    return light -> shows(light, hand) && !isTwoAndOne(light);
  }

  /** 33 CFR 62.45(d)(1): US lateral lights flash or occult regularly. */
  static LightLimit regular(Colour hand) {
    return light -> shows(light, hand) && isRegular(light);
  }

  static LightLimit preferredChannel(Colour hand) {
    return light -> shows(light, hand) && isTwoAndOne(light);
  }

  static LightLimit cardinal(Quadrant quadrant) {
    return light -> shows(light, LightColour.WHITE) && hasCardinalRhythm(light, quadrant);
  }

  static LightLimit isolatedDanger() {
    return light -> shows(light, LightColour.WHITE) && isPairOfFlashes(light);
  }

  static LightLimit safeWater() {
    return light -> shows(light, LightColour.WHITE) && hasSafeWaterRhythm(light);
  }

  /** TP 968 names Mo(A) and LFl 10s. */
  static LightLimit morseOrLong() {
    return light ->
        safeWater().allows(light)
            && (is(light, LightClass.MORSE) || is(light, LightClass.LONG_FLASHING));
  }

  /** 33 CFR 62.45(d)(3) names Mo(A) alone. */
  static LightLimit morse() {
    return light -> safeWater().allows(light) && is(light, LightClass.MORSE);
  }

  static LightLimit special() {
    return light -> shows(light, LightColour.YELLOW) && !hasRhythmOfWhiteMark(light);
  }

  static LightLimit wreck() {
    return light ->
        is(light, WRECK.lightClass())
            && light.colours().size() == 2
            && light.timeline().sameRhythmAs(WRECK.timeline());
  }

  /** White, flashing or occulting regularly, which no white mark of the system does. */
  static LightLimit plainWhite() {
    return light ->
        shows(light, LightColour.WHITE)
            && (is(light, LightClass.FLASHING) || is(light, LightClass.OCCULTING));
  }

  /** 33 CFR 62.51(b)(5): on the Western Rivers the hand's colour or white, in this group. */
  static LightLimit river(Colour hand, int flashes) {
    return light ->
        (shows(light, hand) || shows(light, LightColour.WHITE))
            && (flashes == 1 ? is(light, LightClass.FLASHING) : isGroupOf(light, flashes));
  }

  /** Leading lights: any colour, fixed or rhythmic. */
  static LightLimit any() {
    return light -> light.colours().size() == 1;
  }

  private static boolean shows(LightCharacter light, Colour hand) {
    return shows(light, hand == Colour.RED ? LightColour.RED : LightColour.GREEN);
  }

  private static boolean shows(LightCharacter light, LightColour colour) {
    return light.colours().equals(List.of(colour));
  }

  private static boolean isRegular(LightCharacter light) {
    return switch (light.lightClass()) {
      case FLASHING, OCCULTING, ISOPHASE, QUICK -> true;
      default -> false;
    };
  }

  private static boolean isTwoAndOne(LightCharacter light) {
    return is(light, LightClass.COMPOSITE_GROUP_FLASHING) && light.group().equals(TWO_AND_ONE);
  }

  /** IALA R1001 section 3; the clock face: continuous at twelve, then three, six, nine. */
  private static boolean hasCardinalRhythm(LightCharacter light, Quadrant quadrant) {
    return switch (quadrant) {
      case NORTH -> is(light, LightClass.QUICK) || is(light, LightClass.VERY_QUICK);
      case EAST ->
          group(light, LightClass.GROUP_QUICK, 3, 10)
              || group(light, LightClass.GROUP_VERY_QUICK, 3, 5);
      case SOUTH ->
          group(light, LightClass.GROUP_QUICK_AND_LONG_FLASH, 6, 15)
              || group(light, LightClass.GROUP_VERY_QUICK_AND_LONG_FLASH, 6, 10);
      case WEST ->
          group(light, LightClass.GROUP_QUICK, 9, 15)
              || group(light, LightClass.GROUP_VERY_QUICK, 9, 10);
    };
  }

  private static boolean isPairOfFlashes(LightCharacter light) {
    return isGroupOf(light, 2);
  }

  private static boolean isGroupOf(LightCharacter light, int flashes) {
    return is(light, LightClass.GROUP_FLASHING) && light.group().equals(List.of(flashes));
  }

  private static boolean hasSafeWaterRhythm(LightCharacter light) {
    return switch (light.lightClass()) {
      case ISOPHASE, OCCULTING -> true;
      case LONG_FLASHING -> hasPeriod(light, 10);
      case MORSE -> light.morse().equals("A");
      default -> false;
    };
  }

  private static boolean hasRhythmOfWhiteMark(LightCharacter light) {
    for (Quadrant quadrant : Quadrant.values()) {
      if (hasCardinalRhythm(light, quadrant)) {
        return true;
      }
    }
    return isPairOfFlashes(light) || hasSafeWaterRhythm(light);
  }

  private static boolean is(LightCharacter light, LightClass lightClass) {
    return light.lightClass() == lightClass;
  }

  private static boolean group(
      LightCharacter light, LightClass lightClass, int flashes, int seconds) {
    return is(light, lightClass)
        && light.group().equals(List.of(flashes))
        && hasPeriod(light, seconds);
  }

  private static boolean hasPeriod(LightCharacter light, int seconds) {
    return light.periodMillis().orElse(seconds * 1000) == seconds * 1000;
  }
}
