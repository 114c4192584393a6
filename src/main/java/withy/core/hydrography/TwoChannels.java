package withy.core.hydrography;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import withy.core.Chance;
import withy.core.geometry.Polyline.Foot;
import withy.core.geometry.Position;
import withy.core.waterway.Keel;

/** Two channels that part or meet, with a middle ground between them. */
final class TwoChannels extends Layout {
  private static final double EROSION = 50;

  private final boolean part;

  private TwoChannels(Chance chance, Keel keel, double tide, boolean part) {
    super(chance, keel, tide);
    this.part = part;
  }

  /** Inland, a channel divides into a preferred and a secondary one. */
  static TwoChannels parting(Chance chance, Keel keel, double tide) {
    return new TwoChannels(chance, keel, tide, true);
  }

  /** Inland, two channels meet and run on as one. */
  static TwoChannels meeting(Chance chance, Keel keel, double tide) {
    return new TwoChannels(chance, keel, tide, false);
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
    double end = part ? -1 : 1;
    trunk.add(at(end * BEYOND, between(-250, 250)));
    trunk.add(at(end * 900, between(-120, 120)));
    trunk.add(at(end * 560, between(-90, 90)));
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
    double end = part ? 1 : -1;
    double from = frame.inland(joint);
    List<Position> arm = new ArrayList<>(List.of(joint));
    arm.add(at(from + end * 210, swing * between(115, 135)));
    arm.add(at(from + end * 520, swing * between(260, 330)));
    arm.add(at(from + end * 900, swing * between(300, 420)));
    arm.add(at(end * BEYOND, swing * between(330, 480)));
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
