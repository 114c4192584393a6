package withy.core.mark;

/**
 * What a practice calls its marks. Canada names bifurcation buoys after the hand on which the
 * preferred channel leaves them: its port bifurcation buoy is IALA's preferred channel to
 * STARBOARD.
 */
public final class PracticeNames {
  private PracticeNames() {}

  /** The message key of the name; the general one where the practice has no such marks. */
  public static String key(Practice practice, MarkKind kind) {
    return practice.mark(kind).map(MarkDescription::nameKey).orElse("mark." + kind.id());
  }
}
