package withy.core.hydrography;

import java.util.Optional;
import withy.core.geometry.Polyline;
import withy.core.mark.Practice;
import withy.core.mark.Side;
import withy.core.mark.SideRules;
import withy.core.mark.Travel;
import withy.core.waterway.Fairway;
import withy.core.waterway.Keel;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;
import withy.core.waterway.WayPast;

/** What the depths say of a lateral mark: both ways past it are sailed. */
public enum LateralCheck {
  /** On the side of the rules the keel has her water and her margin, on the other she grounds. */
  BORNE_OUT,
  /** Only the other side has the water. */
  CONTRADICTED,
  /** There is water on both sides. */
  OPEN_BOTH_SIDES,
  /** There is too little water on both sides. */
  SHALLOW_BOTH_SIDES;

  /** Whether the depths bear a mark out; not one that is not lateral or serves no fairway. */
  public static boolean isBorneOut(Practice practice, Waterway water, PlacedMark mark, Keel keel) {
    return of(practice, water, mark, keel).filter(BORNE_OUT::equals).isPresent();
  }

  /** What the depths say of a mark; empty of one that is not lateral or serves no fairway. */
  public static Optional<LateralCheck> of(
      Practice practice, Waterway water, PlacedMark mark, Keel keel) {
    return water
        .served(mark)
        .filter(any -> mark.kind().isLateral())
        .flatMap(
            fairway ->
                SideRules.side(practice, mark.kind(), Travel.WITH, null)
                    .map(side -> of(water, fairway, mark, side, keel)));
  }

  private static LateralCheck of(
      Waterway water, Fairway fairway, PlacedMark mark, Side side, Keel keel) {
    double right = least(water, fairway, mark, side, keel);
    double wrong = least(water, fairway, mark, side.opposite(), keel);
    if (keel.isSafe(right)) {
      return keel.groundsSurely(wrong) ? BORNE_OUT : OPEN_BOTH_SIDES;
    }
    return keel.isSafe(wrong) ? CONTRADICTED : SHALLOW_BOTH_SIDES;
  }

  private static double least(
      Waterway water, Fairway fairway, PlacedMark mark, Side side, Keel keel) {
    Polyline track = WayPast.lateral(fairway, mark, Travel.WITH, side);
    return water.sail(track, keel).leastDepth();
  }
}
