package withy.core.light;

/**
 * The periods that this project takes where a character does not state one: those most in use for
 * the class (rates of Chart 1 P 10, cardinal marks of the IALA buoyage system, Fl 4s and Oc 4s a
 * flash of group lights), and long enough for large groups.
 */
final class DefaultPeriods {

  private DefaultPeriods() {}

  /** The period in milliseconds that stands in for one that is not stated. */
  static int of(Rhythm rhythm, int colours) {
    int count = rhythm.count();
    return switch (rhythm.lightClass()) {
      case FIXED, QUICK -> 1000;
      case VERY_QUICK -> 500;
      case ULTRA_QUICK -> 250;
      case FLASHING, ISOPHASE -> 4000;
      case OCCULTING -> 6000;
      case GROUP_OCCULTING, COMPOSITE_GROUP_OCCULTING -> 4000 * count;
      case GROUP_FLASHING -> count == 2 ? 5000 : 4000 * count;
      case COMPOSITE_GROUP_FLASHING -> 2000 * count;
      case LONG_FLASHING -> 10_000;
      case GROUP_LONG_FLASHING -> 7500 * count;
      case GROUP_QUICK -> Math.max(10_000, 1000 * count + 6000);
      case GROUP_VERY_QUICK -> count <= 5 ? 5000 : Math.max(10_000, 500 * count + 3000);
      case GROUP_QUICK_AND_LONG_FLASH -> Math.max(15_000, 1000 * count + 9000);
      case GROUP_VERY_QUICK_AND_LONG_FLASH -> Math.max(10_000, 500 * count + 7000);
      case INTERRUPTED_QUICK, INTERRUPTED_VERY_QUICK, INTERRUPTED_ULTRA_QUICK, ALTERNATING ->
          10_000;
      case MORSE -> MorseCode.signs(rhythm.morse()).length() <= 2 ? 8000 : morsePeriod(rhythm);
      case FIXED_AND_FLASHING, ALTERNATING_FLASHING -> Math.max(10_000, 4000 * count);
      case ALTERNATING_OCCULTING -> 1500 * Math.max(count, colours);
    };
  }

  private static int morsePeriod(Rhythm rhythm) {
    return 15_000 * ((MorseCode.signs(rhythm.morse()).length() + 5) / 6);
  }
}
