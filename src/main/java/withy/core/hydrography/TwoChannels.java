package withy.core.hydrography;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import withy.core.Chance;
import withy.core.geometry.Polyline.Foot;
import withy.core.geometry.Position;
import withy.core.waterway.Keel;

/**
 * Two channels that part or meet, with a middle ground between them: land where they lead away from
 * each other, a bank where they keep side by side.
 */
final class TwoChannels extends Layout {
  private static final double EROSION = 50;

  /** Metres from the joint of a corner of a channel's arm, and how far off the middle it lies. */
  private record Corner(double along, int least, int most) {}

  private static final List<Corner> AWAY =
      List.of(new Corner(210, 115, 135), new Corner(520, 260, 330), new Corner(900, 300, 420));

  private static final List<Corner> BESIDE =
      List.of(new Corner(210, 70, 85), new Corner(480, 116, 128), new Corner(900, 112, 132));

  private final boolean part;
  private final List<Corner> arms;
  private final Corner end;

  private TwoChannels(
      Chance chance, Keel keel, double tide, boolean part, List<Corner> arms, Corner end) {
    super(chance, keel, tide);
    this.part = part;
    this.arms = arms;
    this.end = end;
  }

  private static TwoChannels away(Chance chance, Keel keel, double tide, boolean part) {
    return new TwoChannels(chance, keel, tide, part, AWAY, new Corner(BEYOND, 330, 480));
  }

  /** They part or meet, and keep near each other, so that a boat in one has marks of both. */
  static TwoChannels sideBySide(Chance chance, Keel keel, double tide) {
    boolean part = chance.oneIn(2);
    return new TwoChannels(chance, keel, tide, part, BESIDE, new Corner(BEYOND, 120, 140));
  }

  /** Inland, a channel divides into a preferred and a secondary one. */
  static TwoChannels parting(Chance chance, Keel keel, double tide) {
    return away(chance, keel, tide, true);
  }

  /** Inland, two channels meet and run on as one. */
  static TwoChannels meeting(Chance chance, Keel keel, double tide) {
    return away(chance, keel, tide, false);
  }

  @Override
  Seabed seabed() {
    int swing = hand();
    double wide = width();
    Position joint = at(part ? between(-260, -180) : between(180, 260), between(-40, 40));
    Channel main = channel("main", course(through(joint, swing)), wide);
    Channel second =
        channel(
            part ? "secondary" : "other", course(arm(joint, -swing)), wide * between(80, 95) / 100);
    List<Channel> both = List.of(main, second);
    double shore = between(120, 165);
    Seabed seabed = new Seabed(frame, spot -> ground(spot, both, shore)).cut(main).cut(second);
    double along = main.course().foot(joint).along() + (part ? -430 : 430);
    return seabed.cut(creek(main, along, hand()));
  }

  /** The course of the main channel, in the conventional direction. */
  private List<Position> through(Position joint, int swing) {
    List<Position> trunk = new ArrayList<>();
    double out = part ? -1 : 1;
    trunk.add(at(out * BEYOND, between(-250, 250)));
    trunk.add(at(out * 900, between(-120, 120)));
    trunk.add(at(out * 560, between(-90, 90)));
    List<Position> arm = arm(joint, swing);
    List<Position> line = new ArrayList<>();
    if (part) {
      line.addAll(trunk);
      line.addAll(arm);
    } else {
      line.addAll(arm);
      Collections.reverse(trunk);
      line.addAll(trunk);
    }
    return line;
  }

  /**
   * One of the two, in the conventional direction: from the joint inland, or from the sea to it.
   */
  private List<Position> arm(Position joint, int swing) {
    double inland = part ? 1 : -1;
    double from = frame.inland(joint);
    List<Position> arm = new ArrayList<>(List.of(joint));
    for (Corner each : arms) {
      arm.add(at(from + inland * each.along(), swing * between(each.least(), each.most())));
    }
    arm.add(at(inland * end.along(), swing * between(end.least(), end.most())));
    if (!part) {
      Collections.reverse(arm);
    }
    return arm;
  }

  private double ground(Spot spot, List<Channel> both, double reach) {
    double off = outside(spot, both);
    if (isHigh(reach - off, EROSION)) {
      return inland();
    }
    double coast = reach - off + EROSION * erosion(spot.place()) * Unevenness.smooth(off / 60);
    Foot foot = spot.feet().get(0);
    double inner = Math.max(both.get(0).inner(foot), 0);
    double more = off < 120 ? 0.8 * inner : 0;
    return coast <= 0 ? shore(coast, 0) : shore(coast, banks(foot.along(), foot.off(), more));
  }
}
