package withy.core.mark;

import java.util.List;
import withy.core.light.LightCharacter;
import withy.core.light.LightClass;
import withy.core.light.LightColour;

/**
 * Which lights a kind of mark may show. IALA fixes the periods of cardinal lights, of LFl 10s and
 * of the wreck light alone; a period that is not stated passes.
 */
final class LightRules {
  private static final LightCharacter WRECK = LightCharacter.parse("Al.Oc BuY 3s");
  private static final List<Integer> TWO_AND_ONE = List.of(2, 1);

  private final Practice practice;
  private final LightCharacter light;

  private LightRules(Practice practice, LightCharacter light) {
    this.practice = practice;
    this.light = light;
  }

  static boolean allows(Practice practice, MarkKind kind, LightCharacter light) {
    return new LightRules(practice, light).allows(kind);
  }

  private boolean allows(MarkKind kind) {
    Region region = practice.region();
    return switch (kind) {
      case PORT_HAND -> shows(region.portHand()) && hasLateralRhythm();
      case STARBOARD_HAND -> shows(region.starboardHand()) && hasLateralRhythm();
      case PREFERRED_CHANNEL_TO_STARBOARD -> shows(region.portHand()) && isTwoAndOne();
      case PREFERRED_CHANNEL_TO_PORT -> shows(region.starboardHand()) && isTwoAndOne();
      case NORTH_CARDINAL, EAST_CARDINAL, SOUTH_CARDINAL, WEST_CARDINAL ->
          shows(LightColour.WHITE) && hasCardinalRhythm(kind.quadrant());
      case ISOLATED_DANGER -> shows(LightColour.WHITE) && isPairOfFlashes();
      case SAFE_WATER -> shows(LightColour.WHITE) && hasSafeWaterRhythm() && isUsedHere();
      case SPECIAL -> shows(LightColour.YELLOW) && !hasRhythmOfWhiteMark();
      case EMERGENCY_WRECK -> isWreckLight();
    };
  }

  private boolean shows(Colour lateral) {
    return shows(lateral == Colour.RED ? LightColour.RED : LightColour.GREEN);
  }

  private boolean shows(LightColour colour) {
    return light.colours().equals(List.of(colour));
  }

  /** 33 CFR 62.45(d)(1): US lateral lights flash or occult regularly. */
  private boolean hasLateralRhythm() {
    if (practice != Practice.USA) {
      return !isTwoAndOne();
    }
    return switch (light.lightClass()) {
      case FLASHING, OCCULTING, ISOPHASE, QUICK -> true;
      default -> false;
    };
  }

  private boolean isTwoAndOne() {
    return is(LightClass.COMPOSITE_GROUP_FLASHING) && light.group().equals(TWO_AND_ONE);
  }

  /** IALA R1001 section 3; the clock face: continuous at twelve, then three, six, nine. */
  private boolean hasCardinalRhythm(Quadrant quadrant) {
    return switch (quadrant) {
      case NORTH -> is(LightClass.QUICK) || is(LightClass.VERY_QUICK);
      case EAST -> group(LightClass.GROUP_QUICK, 3, 10) || group(LightClass.GROUP_VERY_QUICK, 3, 5);
      case SOUTH ->
          group(LightClass.GROUP_QUICK_AND_LONG_FLASH, 6, 15)
              || group(LightClass.GROUP_VERY_QUICK_AND_LONG_FLASH, 6, 10);
      case WEST ->
          group(LightClass.GROUP_QUICK, 9, 15) || group(LightClass.GROUP_VERY_QUICK, 9, 10);
    };
  }

  private boolean isPairOfFlashes() {
    return is(LightClass.GROUP_FLASHING) && light.group().equals(List.of(2));
  }

  private boolean hasSafeWaterRhythm() {
    return switch (light.lightClass()) {
      case ISOPHASE, OCCULTING -> true;
      case LONG_FLASHING -> hasPeriod(10);
      case MORSE -> light.morse().equals("A");
      default -> false;
    };
  }

  /** 33 CFR 62.45(d)(3) names Mo(A) alone, TP 968 Mo(A) and LFl 10s. */
  private boolean isUsedHere() {
    return switch (practice) {
      case IALA_A, IALA_B -> true;
      case CANADA -> is(LightClass.MORSE) || is(LightClass.LONG_FLASHING);
      case USA -> is(LightClass.MORSE);
    };
  }

  private boolean hasRhythmOfWhiteMark() {
    for (Quadrant quadrant : Quadrant.values()) {
      if (hasCardinalRhythm(quadrant)) {
        return true;
      }
    }
    return isPairOfFlashes() || hasSafeWaterRhythm();
  }

  private boolean isWreckLight() {
    return is(WRECK.lightClass())
        && light.colours().size() == 2
        && light.timeline().sameRhythmAs(WRECK.timeline());
  }

  private boolean is(LightClass lightClass) {
    return light.lightClass() == lightClass;
  }

  private boolean group(LightClass lightClass, int flashes, int seconds) {
    return is(lightClass) && light.group().equals(List.of(flashes)) && hasPeriod(seconds);
  }

  private boolean hasPeriod(int seconds) {
    return light.periodMillis().orElse(seconds * 1000) == seconds * 1000;
  }
}
