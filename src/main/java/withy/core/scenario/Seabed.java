package withy.core.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import withy.core.geometry.Polyline.Foot;
import withy.core.geometry.Position;
import withy.core.waterway.Danger;
import withy.core.waterway.DepthField;
import withy.core.waterway.Fairway;

/** Puts the depths of a water together: the ground, the channels cut into it, the dangers on it. */
final class Seabed {
  static final double CELL = 20;
  static final int COLUMNS = 100;
  static final Position MIDDLE = new Position(CELL * (COLUMNS - 1) / 2, CELL * (COLUMNS - 1) / 2);

  private final ToDoubleFunction<Position> ground;
  private final List<Channel> channels = new ArrayList<>();
  private final List<Danger> dangers = new ArrayList<>();

  /**
   * A sea floor.
   *
   * @param ground metres below datum before anything is cut into it
   */
  Seabed(ToDoubleFunction<Position> ground) {
    this.ground = ground;
  }

  Seabed cut(Channel channel) {
    channels.add(channel);
    return this;
  }

  Seabed with(Danger danger) {
    dangers.add(danger);
    return this;
  }

  List<Danger> dangers() {
    return dangers;
  }

  List<Fairway> fairways() {
    return channels.stream().map(Channel::fairway).toList();
  }

  DepthField depths() {
    double[] depths = new double[COLUMNS * COLUMNS];
    for (int i = 0; i < depths.length; i++) {
      depths[i] = depth(new Position(CELL * (i % COLUMNS), CELL * (i / COLUMNS)));
    }
    return new DepthField(new Position(0, 0), CELL, COLUMNS, depths);
  }

  private double depth(Position place) {
    double floor = ground.applyAsDouble(place);
    double depth = floor;
    for (Channel each : channels) {
      Foot foot = each.fairway().line().foot(place);
      depth = Math.max(depth, each.carved(foot, floor));
    }
    for (Danger each : dangers) {
      double share = place.distanceTo(each.at()) / each.radius();
      if (share < 1) {
        double over = each.leastDepth() + (depth - each.leastDepth()) * Unevenness.smooth(share);
        depth = Math.min(depth, over);
      }
    }
    return depth;
  }
}
