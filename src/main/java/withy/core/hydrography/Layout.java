package withy.core.hydrography;

import java.util.ArrayList;
import java.util.List;
import withy.core.Chance;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Polyline.Foot;
import withy.core.geometry.Position;
import withy.core.waterway.Keel;

/**
 * What the shapes of water have in common, each drawn by chance. Lengths are metres; flats lie so
 * high that the keel grounds on them at the tide there is, fairways so deep that she has her margin
 * all over.
 */
abstract class Layout {
  /** Metres from the middle to beyond the rim of the chart, whichever way it is turned. */
  static final double BEYOND = 1500;

  /** Metres above datum at which the land begins: where charts draw the coast. */
  static final double COAST = 2.5;

  /** Metres over which a shore dries before it falls to the flats. */
  private static final double FORESHORE = 75;

  private static final double LAND_RISE = 0.05;
  private static final double HIGHEST = 6;

  final Chance chance;
  final Frame frame;

  /** Metres below datum that are too shallow for the keel, and those along the edges. */
  final double flats;

  final double edge;

  /** Metres below datum that leave the keel her margin and little more. */
  final double scant;

  private final Unevenness broad;
  private final Unevenness middle;
  private final Unevenness fine;

  Layout(Chance chance, Keel keel, double tide) {
    this.chance = chance;
    this.frame = new Frame(Seabed.MIDDLE, Bearing.of(chance.below(360)));
    this.broad = new Unevenness(chance.seed(), 420);
    this.middle = new Unevenness(chance.seed(), 170);
    this.fine = new Unevenness(chance.seed(), 75);
    this.flats = keel.draught() - tide - 0.7;
    this.edge = keel.draught() + keel.margin() - tide + 0.7;
    this.scant = Math.rint(10 * (keel.draught() + keel.margin() - tide) + 3) / 10;
  }

  abstract Seabed seabed();

  /** From -1 to 1: how the water has eaten into a shore, or left it standing out. */
  final double erosion(Position place) {
    return 0.55 * broad.at(place.x(), place.y())
        + 0.3 * middle.at(place.x(), place.y())
        + 0.15 * fine.at(place.x(), place.y());
  }

  /** From -1 to 1, smoothly: the lie of a sea floor. */
  final double swell(Position place) {
    return 0.7 * broad.at(place.x(), place.y()) + 0.3 * middle.at(place.x(), place.y());
  }

  /**
   * Mud and sand that the tide has piled into banks along a stream, none of it deeper than the
   * flats.
   *
   * @param along metres along the stream
   * @param off metres across it
   * @param more by how much more, in metres, than elsewhere
   */
  final double banks(double along, double off, double more) {
    double piled = broad.at(0.62 * along, 1.9 * off) + 0.35 * middle.at(0.7 * along, 1.5 * off);
    return flats - 1.5 * Unevenness.smooth((piled + 0.1) / 0.9) - more;
  }

  /**
   * Land, its foreshore, and what lies before it.
   *
   * @param off metres from the coast; negative on the land
   * @param sea metres below datum farther out
   */
  static double shore(double off, double sea) {
    if (off <= 0) {
      return Math.max(-HIGHEST, -COAST + off * LAND_RISE);
    }
    double left = 1 - Math.min(1, off / FORESHORE);
    return sea - (COAST + sea) * left * left;
  }

  /** Whether it is so far inland that no erosion of a coast is felt, nor any mud before it. */
  static boolean isHigh(double off, double erosion) {
    return off < -(HIGHEST - COAST) / LAND_RISE - erosion;
  }

  /** Land as high as it gets. */
  static double inland() {
    return -HIGHEST;
  }

  /** The metres by which a channel is deeper in its middle than it need be. */
  final Channel channel(String id, Polyline course, double width) {
    return new Channel(id, course, width, edge + between(15, 40) / 10, edge);
  }

  /** A line with its corners rounded as water rounds them. */
  final Polyline course(List<Position> corners) {
    List<Position> line = new ArrayList<>();
    for (Position each : new Polyline(corners).rounded().points()) {
      line.add(each.rounded());
    }
    return new Polyline(line);
  }

  /** A creek that leaves a channel on a side, metres along its course, and winds inland. */
  final Creek creek(Channel channel, double along, int side) {
    double start = channel.fairway().width() / 2;
    List<Position> bends = new ArrayList<>();
    double slant = between(-60, 60);
    for (int i = 0; i < 5; i++) {
      double winding = i == 0 ? 0 : between(-45, 45);
      double off = side * (start + i * between(75, 95));
      bends.add(channel.course().beside(along + i * slant + winding, off).rounded());
    }
    return new Creek(new Polyline(bends).rounded(), between(45, 70), Math.min(flats, 0) - 0.2);
  }

  final Position at(double inland, double abeam) {
    return frame.place(inland, abeam).rounded();
  }

  /** The centre of a cell, since the depth over a danger smaller than a cell is that of one. */
  final Position cell(double inland, double abeam) {
    Position near = at(inland, abeam);
    return new Position(
        Seabed.CELL * Math.rint(near.x() / Seabed.CELL),
        Seabed.CELL * Math.rint(near.y() / Seabed.CELL));
  }

  final double width() {
    return between(80, 120);
  }

  final double between(int least, int most) {
    return chance.between(least, most);
  }

  /** One of the two hands: 1 or -1. */
  final int hand() {
    return chance.oneIn(2) ? 1 : -1;
  }

  /** Metres outside the edges of the nearest channel. */
  static double outside(Spot spot, List<Channel> channels) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < channels.size(); i++) {
      Foot foot = spot.feet().get(i);
      nearest = Math.min(nearest, foot.distance() - channels.get(i).fairway().width() / 2);
    }
    return nearest;
  }
}
