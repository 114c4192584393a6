package withy.core.item;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.mark.Practice;
import withy.core.mark.Recognition;
import withy.core.mark.Structure;
import withy.core.mark.TopmarkShape;
import withy.core.scenario.View;

/**
 * A body with or without its topmark that tells a kind of mark from all others when it is seen in
 * some view. A lateral silhouette tells only the hand: a preferred-channel mark of the same hand
 * has it as well.
 *
 * @param structure of a fixed mark; null where the body says all
 */
record Sight(MarkDescription mark, BodyShape body, @Nullable Structure structure, boolean topmark) {
  /** Every sight of a mark in a view, none where it cannot be told in it. */
  static List<Sight> of(Practice practice, MarkDescription mark, View view) {
    Set<Sight> telling = new LinkedHashSet<>();
    MarkLook look = mark.look();
    for (BodyShape body : look.bodies()) {
      for (boolean topmark : new boolean[] {false, true}) {
        boolean stands = topmark ? look.topmarkPossible(body) : !look.topmarkRequired(body);
        if (stands && tells(practice, mark, body, topmark, view)) {
          telling.addAll(built(mark, body, topmark));
        }
      }
    }
    return List.copyOf(telling);
  }

  private static List<Sight> built(MarkDescription mark, BodyShape body, boolean topmark) {
    List<Structure> structures = mark.look().structures();
    if (structures.isEmpty()) {
      return List.of(new Sight(mark, body, null, topmark));
    }
    List<Sight> built = new ArrayList<>();
    structures.forEach(each -> built.add(new Sight(mark, body, each, topmark)));
    return built;
  }

  /** The mark so seen, with a light or unlit. */
  Appearance appearance(@Nullable LightCharacter light) {
    return mark.look().appearance(body, topmark, light).built(structure);
  }

  private static boolean tells(
      Practice practice, MarkDescription mark, BodyShape body, boolean topmark, View view) {
    Appearance seen = mark.look().appearance(body, topmark, null);
    @Nullable TopmarkShape shape = seen.topmark() == null ? null : seen.topmark().shape();
    return switch (view) {
      case NEAR -> Recognition.byDay(practice, seen).equals(List.of(mark.kind()));
      case DISTANT ->
          mark.isToldAtNight()
              && sameHand(Recognition.bySilhouette(practice, body, shape), mark.kind());
      case LIGHT -> mark.isToldAtNight() && !mark.look().lights().isEmpty();
    };
  }

  private static boolean sameHand(List<MarkKind> recognised, MarkKind kind) {
    for (MarkKind each : recognised) {
      @Nullable MarkKind hand = hand(each);
      boolean same = hand != null && hand.equals(hand(kind));
      if (!each.equals(kind) && !same) {
        return false;
      }
    }
    return recognised.contains(kind);
  }

  /** The lateral mark whose shape and topmark a kind has. */
  private static @Nullable MarkKind hand(MarkKind kind) {
    if (kind.equals(MarkKind.PREFERRED_CHANNEL_TO_STARBOARD)) {
      return MarkKind.PORT_HAND;
    }
    if (kind.equals(MarkKind.PREFERRED_CHANNEL_TO_PORT)) {
      return MarkKind.STARBOARD_HAND;
    }
    return kind.isLateral() ? kind : null;
  }
}
