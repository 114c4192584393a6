package withy.core.waterway;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;

/**
 * How a boat sails along a channel: a little to starboard of its middle, and out of it where she
 * leaves a mark of its edge on the wrong hand. Lengths are metres along the line, from its start.
 *
 * @param line the middle of the channel in the direction in which she sails
 * @param width of the channel from edge to edge, above 0
 */
public record ChannelWay(Polyline line, double width) {
  /** The share of the width by which she keeps to starboard of the middle. */
  private static final double KEEPS = 0.15;

  /** Metres from one corner of her track to the next. */
  private static final double STEP = 25;

  /** Metres before and behind a mark between which she is wholly beside it. */
  private static final double BESIDE = 30;

  /** Metres before and behind a mark where she leaves the channel, and is back in it. */
  private static final double SWERVE = 120;

  /** How far along the channel a place lies. */
  public double along(Position place) {
    return line.foot(place).along();
  }

  /** Whether she leaves to starboard what stands at a place, if she keeps to the channel. */
  public boolean leavesToStarboard(Position place) {
    return line.foot(place).off() > width * KEEPS;
  }

  /**
   * Her track in the channel.
   *
   * @param corners places along it at which the track is to have a corner
   */
  public Polyline way(double from, double to, List<Double> corners) {
    return track(from, to, corners, along -> width * KEEPS);
  }

  /** Her track if she leaves a mark of the edge outside the channel on the wrong hand. */
  public Polyline round(PlacedMark mark, double from, double to) {
    Polyline.Foot foot = line.foot(mark.position());
    double beyond = foot.off() + Math.signum(foot.off()) * WayPast.OUTSIDE;
    double at = foot.along();
    return track(
        from,
        to,
        List.of(at - SWERVE, at - BESIDE, at, at + BESIDE, at + SWERVE),
        along -> {
          double gone = (Math.abs(along - at) - BESIDE) / (SWERVE - BESIDE);
          double kept = Math.min(1, Math.max(0, gone));
          return beyond + kept * (width * KEEPS - beyond);
        });
  }

  private interface Off {
    double at(double along);
  }

  private Polyline track(double from, double to, List<Double> corners, Off off) {
    NavigableSet<Double> along = new TreeSet<>(List.of(from, to));
    along.addAll(corners);
    for (double step = STEP * Math.ceil(from / STEP); step < to; step += STEP) {
      along.add(step);
    }
    List<Position> track = new ArrayList<>();
    for (double each : along.subSet(from, true, to, true)) {
      track.add(line.beside(each, off.at(each)).rounded());
    }
    return Polyline.through(track);
  }
}
