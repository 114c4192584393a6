package withy.core.waterway;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.mark.ChannelIntent;
import withy.core.mark.Practice;
import withy.core.mark.Quadrant;
import withy.core.mark.Side;
import withy.core.mark.SideRules;
import withy.core.mark.Travel;

/**
 * Plans a voyage: along the fairways from end to end, keeping to their starboard side; in open
 * water once round the danger, well outside its marks.
 */
final class VoyagePlan {
  /** Metres between two points of a track. */
  private static final double STEP = 20;

  /** The share of a fairway's width by which a boat keeps to its starboard side. */
  private static final double STARBOARD = 0.14;

  /** Metres from a track within which a mark of no fairway is called. */
  private static final double BESIDE = 300;

  /** Metres off a danger at which she goes round: outside its marks. */
  private static final double ROUND = 110;

  /** Metres from the end of a fairway within which another one does not leave it. */
  private static final double JOINED = 1;

  private final Waterway water;
  private final Practice practice;

  VoyagePlan(Waterway water, Practice practice) {
    this.water = water;
    this.practice = practice;
  }

  /** A part of a fairway, in metres along it. */
  private record Leg(Fairway fairway, double from, double to) {}

  Voyage voyage(String id, boolean inbound) {
    Optional<Fairway> goal = water.fairway(id).or(() -> water.fairways().stream().findFirst());
    if (goal.isEmpty()) {
      return round(inbound);
    }
    List<Leg> legs = legs(goal.get());
    Travel travel = inbound ? Travel.WITH : Travel.AGAINST;
    Polyline track = track(legs, travel);
    List<Call> calls = new ArrayList<>();
    for (PlacedMark each : water.marks()) {
      call(each, legs, track, travel).ifPresent(calls::add);
    }
    return Voyage.along(water, travel, track, calls);
  }

  /** The fairway with what leads to it from the sea, and on from where it ends in another. */
  private List<Leg> legs(Fairway goal) {
    List<Leg> legs = new ArrayList<>();
    legs.add(new Leg(goal, 0, goal.line().length()));
    for (Fairway other : water.fairways()) {
      if (other.equals(goal)) {
        continue;
      }
      Polyline.Foot begin = other.line().foot(goal.line().start());
      Polyline.Foot end = other.line().foot(goal.line().end());
      if (begin.distance() < other.width() / 2 && begin.along() > JOINED) {
        legs.add(0, new Leg(other, 0, begin.along()));
      } else if (end.distance() < other.width() / 2
          && end.along() < other.line().length() - JOINED) {
        legs.add(new Leg(other, end.along(), other.line().length()));
      }
    }
    return legs;
  }

  private Polyline track(List<Leg> legs, Travel travel) {
    List<Position> way = new ArrayList<>();
    for (Leg leg : legs) {
      double off = leg.fairway().width() * STARBOARD * (travel == Travel.WITH ? 1 : -1);
      for (double along = leg.from(); along <= leg.to(); along += STEP) {
        Position next = leg.fairway().line().beside(along, off);
        if (water.depths().contains(next)) {
          way.add(next);
        }
      }
    }
    Polyline with = line(smooth(smooth(way)));
    return travel == Travel.WITH ? with : with.reversed();
  }

  /** Every point between its neighbours, so that she turns as a boat does. */
  private static List<Position> smooth(List<Position> way) {
    List<Position> smooth = new ArrayList<>(way);
    for (int i = 1; i < way.size() - 1; i++) {
      Position before = way.get(i - 1);
      Position here = way.get(i);
      Position after = way.get(i + 1);
      smooth.set(
          i,
          new Position(
              (before.x() + 2 * here.x() + after.x()) / 4,
              (before.y() + 2 * here.y() + after.y()) / 4));
    }
    return smooth;
  }

  private static Polyline line(List<Position> way) {
    return Polyline.through(way.stream().map(Position::rounded).toList());
  }

  private Voyage round(boolean clockwise) {
    Danger danger = water.dangers().get(0);
    double radius = danger.radius() + ROUND;
    List<Position> way = new ArrayList<>();
    for (int degrees = 225; degrees <= 225 + 360; degrees += 5) {
      way.add(danger.at().moved(Bearing.of(clockwise ? degrees : -degrees + 90), radius));
    }
    Polyline track = line(way.stream().filter(water.depths()::contains).toList());
    List<Call> calls = new ArrayList<>();
    for (PlacedMark each : water.marks()) {
      call(each, List.of(), track, Travel.NONE).ifPresent(calls::add);
    }
    return Voyage.along(water, Travel.NONE, track, calls);
  }

  private Optional<Call> call(PlacedMark mark, List<Leg> legs, Polyline track, Travel travel) {
    Polyline.Foot foot = track.foot(mark.position());
    boolean beyond = foot.along() <= 0 || foot.along() >= track.length();
    if (beyond || mark.kind().isLeading() || !isPassed(mark, legs, foot)) {
      return Optional.empty();
    }
    @Nullable Quadrant pass = pass(mark, track.at(foot.along()));
    boolean toStarboard = foot.off() > 0;
    Side hand = toStarboard ? Side.LEAVE_TO_STARBOARD : Side.LEAVE_TO_PORT;
    Optional<Side> side =
        pass != null
            ? Optional.of(hand)
            : SideRules.side(practice, mark.kind(), travel, intent(mark, legs));
    return Optional.of(new Call(mark, foot.along(), toStarboard, side.orElse(null), pass));
  }

  private static boolean isPassed(PlacedMark mark, List<Leg> legs, Polyline.Foot foot) {
    @Nullable String serves = mark.serves();
    if (serves == null) {
      return foot.distance() < BESIDE;
    }
    for (Leg leg : legs) {
      if (leg.fairway().id().equals(serves)) {
        double along = leg.fairway().line().foot(mark.position()).along();
        return mark.kind().isPreferredChannel() || (along >= leg.from() && along <= leg.to());
      }
    }
    return false;
  }

  /** The channel wanted where a mark stands at a junction. */
  private static @Nullable ChannelIntent intent(PlacedMark mark, List<Leg> legs) {
    if (!mark.kind().isPreferredChannel()) {
      return null;
    }
    String inner = legs.get(legs.size() - 1).fairway().id();
    return inner.equals(mark.serves()) ? ChannelIntent.PREFERRED : ChannelIntent.SECONDARY;
  }

  /** On which side of a cardinal mark a place lies, if that is the one it is named after. */
  private static @Nullable Quadrant pass(PlacedMark mark, Position abeam) {
    if (!mark.kind().isCardinal()) {
      return null;
    }
    Quadrant lies = Quadrant.of(mark.position().bearingTo(abeam));
    return lies == mark.kind().quadrant() ? lies : null;
  }
}
