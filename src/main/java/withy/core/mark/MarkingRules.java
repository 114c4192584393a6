package withy.core.mark;

import java.util.List;
import withy.core.light.LightCharacter;

/** What kinds of mark a practice has, how they look, and what else it allows. */
public final class MarkingRules {
  private MarkingRules() {}

  /** The kinds that a practice has, as the standards order them. */
  public static List<MarkKind> kinds(Practice practice) {
    return practice.kinds();
  }

  /** Whether a practice has marks of a kind. */
  public static boolean has(Practice practice, MarkKind kind) {
    return practice.kinds().contains(kind);
  }

  /**
   * What stands for a kind of mark under a practice.
   *
   * @throws IllegalArgumentException if the practice has no such marks
   */
  public static MarkDescription mark(Practice practice, MarkKind kind) {
    return practice
        .mark(kind)
        .orElseThrow(
            () -> new IllegalArgumentException(practice.id() + " has no " + kind.id() + " marks"));
  }

  /**
   * How marks of a kind look under a practice, as a rule.
   *
   * @throws IllegalArgumentException if the practice has no such marks
   */
  public static MarkLook look(Practice practice, MarkKind kind) {
    return mark(practice, kind).look();
  }

  /**
   * Whether a mark of a kind may have a body of this shape; never where it has no such marks. A
   * beacon of each class may be met, and special marks of any shape.
   */
  public static boolean allows(Practice practice, MarkKind kind, BodyShape body) {
    for (MarkDescription each : practice.marks()) {
      if (each.kind().equals(kind) && allows(each, body)) {
        return true;
      }
    }
    return false;
  }

  /** Whether this very mark may have a body of this shape. */
  static boolean allows(MarkDescription mark, BodyShape body) {
    boolean any =
        mark.kind().equals(MarkKind.SPECIAL)
            && !mark.look().isFixed()
            && body != BodyShape.DAYBOARD;
    boolean beacon = body == BodyShape.BEACON && mark.group().compareTo(MarkGroup.NEW_DANGER) < 0;
    return any || beacon || mark.look().bodies().contains(body);
  }

  /**
   * Whether a mark of a kind may show this light; never where the practice has no such marks, nor a
   * light with sectors. What holds in some waters alone does not count.
   */
  public static boolean allows(Practice practice, MarkKind kind, LightCharacter light) {
    return practice.mark(kind).filter(mark -> mark.lightLimit().allows(light)).isPresent();
  }
}
