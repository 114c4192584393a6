package withy.core.hydrography;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.mark.ChannelIntent;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.mark.Quadrant;
import withy.core.mark.Side;
import withy.core.mark.SideRules;
import withy.core.mark.Travel;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.Fairway;
import withy.core.waterway.Keel;
import withy.core.waterway.LeadingLine;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;
import withy.core.waterway.WayPast;

/**
 * Holds what the rules say of every mark of a water against soundings of its own: every two metres
 * along a track, bilinear between the depths as they are written. It shares nothing with the boat
 * that sails in the product but the tracks.
 */
final class WatersAgreement {
  private static final Travel[] BOTH = {Travel.WITH, Travel.AGAINST};
  private static final double STEP = 2;

  /** Metres off the edge of a danger at which it is cleared. */
  private static final double CLEARANCE = 50;

  /** Metres before and behind a mark at a junction between which a boat passes it. */
  private static final double BEFORE = 150;

  private static final double BEHIND = 260;

  private final Practice practice;
  private final Waterway water;
  private final Keel keel;
  private final List<String> faults = new ArrayList<>();
  private int asked;

  private WatersAgreement(Practice practice, Waterway water, Keel keel) {
    this.practice = practice;
    this.water = water;
    this.keel = keel;
  }

  /**
   * What came of a water.
   *
   * @param asked how often a side of a mark was tried on the soundings
   * @param faults where rules and soundings disagree; none where all is well
   */
  record Found(int asked, List<String> faults) {}

  static Found in(Practice practice, Waterway water, Keel keel) {
    WatersAgreement agreement = new WatersAgreement(practice, water, keel);
    water.marks().forEach(agreement::mark);
    water.fairways().forEach(agreement::fairway);
    water.leadingLines().forEach(agreement::leading);
    return new Found(agreement.asked, agreement.faults);
  }

  private void mark(PlacedMark mark) {
    if (mark.kind().isLateral()) {
      lateral(mark);
    } else if (mark.kind().isCardinal()) {
      cardinal(mark);
    } else if (mark.kind().equals(MarkKind.ISOLATED_DANGER)) {
      isolated(mark);
    } else if (mark.kind().equals(MarkKind.SAFE_WATER)) {
      keeps(mark, "round it", round(mark.position(), 80));
    } else if (!mark.kind().isLeading()) {
      junction(mark);
    }
  }

  private void lateral(PlacedMark mark) {
    Fairway fairway = served(mark);
    for (Travel travel : BOTH) {
      Side right = SideRules.side(practice, mark.kind(), travel, null).orElseThrow();
      keeps(mark, travel + " " + right, WayPast.lateral(fairway, mark, travel, right));
      Side wrong = right.opposite();
      grounds(mark, travel + " " + wrong, WayPast.lateral(fairway, mark, travel, wrong));
    }
  }

  private void cardinal(PlacedMark mark) {
    Danger danger = nearest(mark);
    Quadrant named = mark.kind().quadrant();
    for (double turn : new double[] {90, -90}) {
      Bearing heading = named.middle().plus(turn);
      keeps(mark, "pass " + named, WayPast.cardinal(danger, mark, named, heading));
      Quadrant other = named.opposite();
      grounds(mark, "pass " + other, WayPast.cardinal(danger, mark, other, heading));
    }
  }

  private void isolated(PlacedMark mark) {
    Danger danger = nearest(mark);
    keeps(mark, "round it", round(danger.at(), danger.radius() + CLEARANCE));
    for (double bearing = 0; bearing < 180; bearing += 45) {
      Position from = danger.at().moved(Bearing.of(bearing), danger.radius());
      Position to = danger.at().moved(Bearing.of(bearing + 180), danger.radius());
      grounds(mark, "over it", Polyline.of(from, to));
    }
  }

  /**
   * Both intents: the rule leaves the mark on the hand on which it lies from the channel wanted.
   */
  private void junction(PlacedMark mark) {
    for (ChannelIntent intent : ChannelIntent.values()) {
      boolean preferred = intent == ChannelIntent.PREFERRED;
      Fairway wanted = water.fairways().get(preferred ? 0 : 1);
      Fairway other = water.fairways().get(preferred ? 1 : 0);
      double along = wanted.line().foot(mark.position()).along();
      for (Travel travel : BOTH) {
        Side rule = SideRules.side(practice, mark.kind(), travel, intent).orElseThrow();
        boolean starboard =
            wanted.line().foot(mark.position()).off() > 0 == (travel == Travel.WITH);
        check(mark, (rule == Side.LEAVE_TO_STARBOARD) == starboard, "hand for " + intent);
      }
      keeps(mark, intent + " channel", part(wanted, Math.max(0, along - BEFORE), along + BEHIND));
      double beside = other.line().foot(mark.position()).along();
      List<Position> astray = new ArrayList<>(part(other, beside, beside + BEHIND).points());
      astray.add(wanted.line().at(along + BEHIND));
      grounds(mark, intent + " on the wrong hand", new Polyline(astray));
    }
  }

  /** The whole width that tracks use, from end to end, over a bar as well. */
  private void fairway(Fairway fairway) {
    double length = fairway.line().length();
    for (double share : new double[] {-0.3, 0, 0.3}) {
      List<Position> way = new ArrayList<>();
      for (double along = 60; along < length - 60; along += 15) {
        way.add(fairway.line().beside(along, share * fairway.width()));
      }
      double least = least(new Polyline(way));
      if (!keel.isSafe(least)) {
        faults.add("fairway " + fairway.id() + " at " + share + " has " + least);
      }
    }
  }

  /** The reach that is followed has water, and the bar on it is what is shallowest. */
  private void leading(LeadingLine line) {
    double least = least(line.followed());
    if (!keel.isSafe(least)) {
      faults.add("leading line has " + least);
    }
    for (Danger each : water.dangers()) {
      double over = depth(each.at()) - each.leastDepth();
      if (each.kind() == DangerKind.BAR
          && (Math.abs(over) > 0.15 || least > each.leastDepth() + water.tide() + 0.15)) {
        faults.add("bar is " + over + " off");
      }
    }
  }

  private Fairway served(PlacedMark mark) {
    return water.fairway(String.valueOf(mark.serves())).orElseThrow();
  }

  private Danger nearest(PlacedMark mark) {
    return water.dangers().stream()
        .min(Comparator.comparingDouble(each -> each.at().distanceTo(mark.position())))
        .orElseThrow();
  }

  private static Polyline round(Position middle, double radius) {
    List<Position> ring = new ArrayList<>();
    for (int bearing = 0; bearing <= 360; bearing += 15) {
      ring.add(middle.moved(Bearing.of(bearing), radius));
    }
    return new Polyline(ring);
  }

  private static Polyline part(Fairway fairway, double from, double to) {
    List<Position> part = new ArrayList<>();
    for (double along = from; along <= Math.min(to, fairway.line().length()); along += 10) {
      part.add(fairway.line().at(along));
    }
    return new Polyline(part);
  }

  private void keeps(PlacedMark mark, String what, Polyline track) {
    check(mark, least(track) >= keel.draught() + keel.margin() - 1e-9, what + " touches");
  }

  private void grounds(PlacedMark mark, String what, Polyline track) {
    check(mark, least(track) < keel.draught(), what + " has water");
  }

  private void check(PlacedMark mark, boolean good, String what) {
    asked++;
    if (!good) {
      faults.add(mark.kind().id() + " " + mark.label() + ": " + what);
    }
  }

  private double least(Polyline track) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < track.points().size(); i++) {
      Position from = track.points().get(i - 1);
      Position to = track.points().get(i);
      double dx = to.x() - from.x();
      double dy = to.y() - from.y();
      int steps = (int) Math.ceil(Math.sqrt(dx * dx + dy * dy) / STEP);
      for (int step = 0; step <= steps; step++) {
        double share = (double) step / steps;
        least = Math.min(least, depth(from.x() + share * dx, from.y() + share * dy));
      }
    }
    return least + water.tide();
  }

  private double depth(Position place) {
    return depth(place.x(), place.y());
  }

  private double depth(double x, double y) {
    double across = (x - water.depths().origin().x()) / water.depths().cell();
    double up = (y - water.depths().origin().y()) / water.depths().cell();
    int column = (int) Math.floor(across);
    int row = (int) Math.floor(up);
    if (column < 0
        || row < 0
        || column + 1 >= water.depths().columns()
        || row + 1 >= water.depths().rows()) {
      faults.add("a track leaves the chart at " + x + ", " + y);
      return 0;
    }
    double east = across - column;
    double north = up - row;
    return water.depths().depth(column, row) * (1 - east) * (1 - north)
        + water.depths().depth(column + 1, row) * east * (1 - north)
        + water.depths().depth(column, row + 1) * (1 - east) * north
        + water.depths().depth(column + 1, row + 1) * east * north;
  }
}
