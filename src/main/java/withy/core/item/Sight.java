package withy.core.item;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.mark.Recognition;
import withy.core.mark.TopmarkShape;
import withy.core.scenario.View;

/**
 * A body with or without its topmark that tells a kind of mark from all others when it is seen in
 * some view. A lateral silhouette tells only the hand: a preferred-channel mark of the same hand
 * has it as well.
 */
record Sight(BodyShape body, boolean topmark) {
  private static final Map<Practice, Map<View, Map<MarkKind, List<Sight>>>> ALL = all();

  /** The sights of a kind, none where it cannot be told in this view. */
  static List<Sight> of(Practice practice, MarkKind kind, View view) {
    return ALL.getOrDefault(practice, new EnumMap<>(View.class))
        .getOrDefault(view, new EnumMap<>(MarkKind.class))
        .getOrDefault(kind, List.of());
  }

  private static Map<Practice, Map<View, Map<MarkKind, List<Sight>>>> all() {
    Map<Practice, Map<View, Map<MarkKind, List<Sight>>>> all = new EnumMap<>(Practice.class);
    for (Practice practice : Practice.values()) {
      Map<View, Map<MarkKind, List<Sight>>> views = new EnumMap<>(View.class);
      for (View view : View.values()) {
        views.put(view, byKind(practice, view));
      }
      all.put(practice, views);
    }
    return all;
  }

  private static Map<MarkKind, List<Sight>> byKind(Practice practice, View view) {
    Map<MarkKind, List<Sight>> kinds = new EnumMap<>(MarkKind.class);
    for (MarkKind kind : MarkingRules.kinds(practice)) {
      kinds.put(kind, telling(practice, MarkingRules.look(practice, kind), view));
    }
    return kinds;
  }

  private static List<Sight> telling(Practice practice, MarkLook look, View view) {
    List<Sight> telling = new ArrayList<>();
    for (BodyShape body : look.bodies()) {
      for (boolean topmark : new boolean[] {false, true}) {
        boolean stands = topmark ? look.topmarkPossible(body) : !look.topmarkRequired(body);
        if (stands && tells(practice, look, body, topmark, view)) {
          telling.add(new Sight(body, topmark));
        }
      }
    }
    return List.copyOf(telling);
  }

  private static boolean tells(
      Practice practice, MarkLook look, BodyShape body, boolean topmark, View view) {
    Appearance seen = look.appearance(body, topmark, null);
    @Nullable TopmarkShape shape = seen.topmark() == null ? null : seen.topmark().shape();
    return switch (view) {
      case NEAR -> Recognition.byDay(practice, seen).equals(List.of(look.kind()));
      case DISTANT -> sameHand(Recognition.bySilhouette(practice, body, shape), look.kind());
      case LIGHT -> !look.lights().isEmpty();
    };
  }

  private static boolean sameHand(List<MarkKind> recognised, MarkKind kind) {
    for (MarkKind each : recognised) {
      if (each != kind && !(hand(each) == hand(kind) && hand(kind) != null)) {
        return false;
      }
    }
    return recognised.contains(kind);
  }

  /** The lateral mark whose shape and topmark a kind has. */
  private static @Nullable MarkKind hand(MarkKind kind) {
    return switch (kind) {
      case PORT_HAND, PREFERRED_CHANNEL_TO_STARBOARD -> MarkKind.PORT_HAND;
      case STARBOARD_HAND, PREFERRED_CHANNEL_TO_PORT -> MarkKind.STARBOARD_HAND;
      default -> null;
    };
  }
}
