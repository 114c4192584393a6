package withy.core.mark;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import withy.core.light.LightCharacter;

/** What kinds of mark a practice has, how they look, and what else it allows. */
public final class MarkingRules {
  private static final Map<Practice, Map<MarkKind, MarkLook>> LOOKS = looks();

  private MarkingRules() {}

  /** The kinds that a practice has, in the order of {@link MarkKind}. */
  public static List<MarkKind> kinds(Practice practice) {
    return List.copyOf(looks(practice).keySet());
  }

  /** Whether a practice has marks of a kind. */
  public static boolean has(Practice practice, MarkKind kind) {
    return looks(practice).containsKey(kind);
  }

  /**
   * How marks of a kind look under a practice.
   *
   * @throws IllegalArgumentException if the practice has no such marks
   */
  public static MarkLook look(Practice practice, MarkKind kind) {
    MarkLook look = looks(practice).get(kind);
    if (look == null) {
      throw new IllegalArgumentException(practice.id() + " has no " + kind.id() + " marks");
    }
    return look;
  }

  /** Whether a mark of a kind may have a body of this shape; never where it has no such marks. */
  public static boolean allows(Practice practice, MarkKind kind, BodyShape body) {
    return has(practice, kind)
        && (look(practice, kind).bodies().contains(body) || Bodies.mayBeMet(kind, body));
  }

  /**
   * Whether a mark of a kind may show this light; never where the practice has no such marks, nor a
   * light with sectors.
   */
  public static boolean allows(Practice practice, MarkKind kind, LightCharacter light) {
    return has(practice, kind) && LightRules.allows(practice, kind, light);
  }

  private static Map<MarkKind, MarkLook> looks(Practice practice) {
    return LOOKS.getOrDefault(practice, Collections.emptyMap());
  }

  private static Map<Practice, Map<MarkKind, MarkLook>> looks() {
    Map<Practice, Map<MarkKind, MarkLook>> looks = new EnumMap<>(Practice.class);
    for (Practice practice : Practice.values()) {
      Map<MarkKind, MarkLook> ofPractice = new EnumMap<>(MarkKind.class);
      for (MarkKind kind : MarkKind.values()) {
        if (!(practice == Practice.USA && kind.isCardinal())) {
          ofPractice.put(kind, Looks.of(practice, kind));
        }
      }
      looks.put(practice, Collections.unmodifiableMap(ofPractice));
    }
    return looks;
  }
}
