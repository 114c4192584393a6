package withy.core.waterway;

import java.util.ArrayList;
import java.util.List;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.mark.Quadrant;
import withy.core.mark.Side;
import withy.core.mark.Travel;

/** The tracks on which a boat passes a mark. */
public final class WayPast {
  /** Metres before and behind a mark between which its passing is sailed. */
  private static final double REACH = 200;

  /** Metres beside a lateral mark at which a boat passes it outside the fairway. */
  static final double OUTSIDE = 38;

  /** Metres off a cardinal mark at which it is passed on its side. */
  private static final double OFF = 60;

  private WayPast() {}

  /**
   * Past a lateral mark of a fairway, leaving it on a side: along the fairway where that is the
   * side of the water, else out of the fairway, round the mark and back.
   *
   * @param travel with or against the direction of the fairway
   */
  public static Polyline lateral(Fairway fairway, PlacedMark mark, Travel travel, Side side) {
    Polyline.Foot foot = fairway.line().foot(mark.position());
    double hand = Math.signum(foot.off());
    boolean toStarboard = (side == Side.LEAVE_TO_STARBOARD) == (travel == Travel.WITH);
    double inside = hand * fairway.width() * 0.22;
    double beside = toStarboard == hand > 0 ? inside : foot.off() + hand * OUTSIDE;
    List<Position> track = new ArrayList<>();
    for (double gone : new double[] {-REACH, -REACH / 2, -30, 30, REACH / 2, REACH}) {
      double off = Math.abs(gone) <= 30 ? beside : inside;
      track.add(fairway.line().beside(foot.along() + gone, off).rounded());
    }
    Polyline with = Polyline.through(track);
    return travel == Travel.WITH ? with : with.reversed();
  }

  /**
   * Past a cardinal mark, on a side of the compass.
   *
   * @param heading on which the boat comes up to it, across the side on which she passes
   */
  public static Polyline cardinal(Danger danger, PlacedMark mark, Quadrant pass, Bearing heading) {
    boolean safe = mark.position().bearingTo(danger.at()).angleTo(pass.middle()) > 90;
    Position by = safe ? mark.position().moved(pass.middle(), OFF) : danger.at();
    double reach = danger.radius() + 2 * OFF;
    return Polyline.of(
        by.moved(heading, -reach).rounded(), by.rounded(), by.moved(heading, reach).rounded());
  }
}
