package withy.core.mark;

/**
 * What a practice calls its marks. Canada names bifurcation buoys after the hand on which the
 * preferred channel leaves them: its port bifurcation buoy is IALA's preferred channel to
 * STARBOARD.
 */
public final class PracticeNames {
  private PracticeNames() {}

  /** The message key of the name, {@code mark.<kind>} or {@code mark.<practice>.<kind>}. */
  public static String key(Practice practice, MarkKind kind) {
    return switch (practice) {
      case IALA_A, IALA_B -> "mark." + kind.id();
      case CANADA, USA -> "mark." + practice.id() + "." + kind.id();
    };
  }
}
