package withy.core.hydrography;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import withy.core.geometry.Polyline.Foot;
import withy.core.geometry.Position;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.DepthField;
import withy.core.waterway.Fairway;
import withy.core.waterway.LeadingLine;
import withy.core.waterway.Waterway;

/**
 * Puts the depths of a water together: the ground, the creeks and channels cut into it, what was
 * built on it, the dangers on it.
 */
final class Seabed {
  static final double CELL = 20;
  static final int COLUMNS = 100;
  static final double SIDE = CELL * (COLUMNS - 1);
  static final Position MIDDLE = new Position(SIDE / 2, SIDE / 2);

  private final Frame frame;
  private final Ground ground;
  private final List<Channel> channels = new ArrayList<>();
  private final List<Creek> creeks = new ArrayList<>();
  private final List<Ground> built = new ArrayList<>();
  private final List<Danger> dangers = new ArrayList<>();
  private final List<ToDoubleFunction<Spot>> shapes = new ArrayList<>();
  private final List<LeadingLine> leading = new ArrayList<>();
  private final List<Position> heads = new ArrayList<>();

  /**
   * A sea floor.
   *
   * @param ground what lies there before anything is cut into it
   */
  Seabed(Frame frame, Ground ground) {
    this.frame = frame;
    this.ground = ground;
  }

  Seabed cut(Channel channel) {
    channels.add(channel);
    return this;
  }

  Seabed cut(Creek creek) {
    creeks.add(creek);
    return this;
  }

  /** What stands in the water, as moles do: nowhere is it deeper than that. */
  Seabed built(Ground wall) {
    built.add(wall);
    return this;
  }

  /** With a danger that rises evenly from its edge to its middle. */
  Seabed with(Danger danger) {
    return with(danger, spot -> spot.place().distanceTo(danger.at()) / danger.radius());
  }

  /**
   * With a danger of some other shape.
   *
   * @param share from 0 in its middle to 1 where it ends, within its radius
   */
  Seabed with(Danger danger, ToDoubleFunction<Spot> share) {
    dangers.add(danger);
    shapes.add(share);
    return this;
  }

  Seabed led(LeadingLine line) {
    leading.add(line);
    return this;
  }

  /** With a place at the end of a mole that bears a mark of the first fairway. */
  Seabed head(Position place) {
    heads.add(place);
    return this;
  }

  List<Position> heads() {
    return heads;
  }

  /** The water without its marks. */
  Waterway water(double tide) {
    List<Fairway> fairways = channels.stream().map(Channel::fairway).toList();
    return new Waterway(depths(), tide, fairways, dangers, List.of(), leading);
  }

  private DepthField depths() {
    double[] depths = new double[COLUMNS * COLUMNS];
    for (int i = 0; i < depths.length; i++) {
      depths[i] = depth(new Position(CELL * (i % COLUMNS), CELL * (i / COLUMNS)));
    }
    return new DepthField(new Position(0, 0), CELL, COLUMNS, depths);
  }

  /** Metres below datum at a place, between the centres of cells as well. */
  double depth(Position place) {
    Spot spot = spot(place);
    double floor = ground.depth(spot);
    for (Creek each : creeks) {
      floor = each.carved(place, floor);
    }
    double depth = floor;
    for (int i = 0; i < channels.size(); i++) {
      depth = Math.max(depth, channels.get(i).carved(spot.feet().get(i), floor));
    }
    for (Ground each : built) {
      depth = Math.min(depth, each.depth(spot));
    }
    for (int i = 0; i < dangers.size(); i++) {
      boolean sill = dangers.get(i).kind() == DangerKind.BAR;
      depth = sill ? depth : over(dangers.get(i), shapes.get(i).applyAsDouble(spot), depth);
    }
    return depth;
  }

  private Spot spot(Position place) {
    List<Foot> feet = new ArrayList<>(channels.size());
    for (Channel each : channels) {
      feet.add(each.foot(place));
    }
    return new Spot(place, frame.inland(place), frame.abeam(place), feet);
  }

  /** The depth over a danger, a share of the way from its middle to its edge. */
  static double over(Danger danger, double share, double depth) {
    if (share >= 1) {
      return depth;
    }
    double over = danger.leastDepth() + (depth - danger.leastDepth()) * Unevenness.smooth(share);
    return Math.min(depth, over);
  }
}
