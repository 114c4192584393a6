package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import withy.core.Chance;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Polyline.Foot;
import withy.core.geometry.Position;
import withy.core.hydrography.LateralCheck;
import withy.core.mark.Practice;
import withy.core.mark.Side;
import withy.core.mark.SideRules;
import withy.core.mark.Travel;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;
import withy.core.waterway.Fairway;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/**
 * A boat in one of two channels that meet or part, before a lateral mark of the other one that
 * stands on the ground between them. For the boats in its own channel the mark is on its right
 * hand; who obeys it from this one leaves the channel and touches.
 */
final class OtherChannel {
  /** Metres along the fairway before the mark from which the boat may come up to it. */
  private static final List<Integer> BEFORE = List.of(240, 300, 360, 420, 480, 540, 600);

  /** Metres behind the mark to which she sails on. */
  private static final double BEHIND = 200;

  /** Metres before and behind the mark between which she goes round it, and is beside it. */
  private static final double ROUND = 150;

  private static final double BESIDE = 30;

  /** Metres from the middle of the boat's channel within which a mark draws her. */
  private static final double NEAR = 230;

  /** Metres from the mark at which she passes it on its far side. */
  private static final double OFF = 38;

  private static final double LEG = 40;

  private final Practice practice;
  private final Waterway water;
  private final Fairway own;
  private final PlacedMark mark;
  private final Travel travel;

  private OtherChannel(
      Practice practice, Waterway water, Fairway own, PlacedMark mark, Travel travel) {
    this.practice = practice;
    this.water = water;
    this.own = own;
    this.mark = mark;
    this.travel = travel;
  }

  /** A scenario in a water, one of all that it holds by chance; empty where it holds none. */
  static Optional<Scenario> in(Practice practice, Waterway water, Travel travel, Chance chance) {
    List<OtherChannel> places = new ArrayList<>();
    for (PlacedMark mark : water.marks()) {
      for (Fairway own : water.fairways()) {
        if (mark.kind().isLateral() && mark.serves() != null && !own.id().equals(mark.serves())) {
          places.add(new OtherChannel(practice, water, own, mark, travel));
        }
      }
    }
    for (OtherChannel each : chance.shuffled(places)) {
      Optional<Scenario> scenario = each.scenario(chance);
      if (scenario.isPresent()) {
        return scenario;
      }
    }
    return Optional.empty();
  }

  private Optional<Scenario> scenario(Chance chance) {
    if (own.line().foot(mark.position()).distance() > NEAR
        || !LateralCheck.isBorneOut(practice, water, mark, Afloat.KEEL)) {
      return Optional.empty();
    }
    for (int before : chance.shuffled(BEFORE)) {
      if (!isWithin(before)) {
        continue;
      }
      Afloat boat = boat(before);
      if (boat.comesUpTo(mark) && isTold(boat) && isOverruled(boat)) {
        return Optional.of(boat.before(mark, situation(boat)));
      }
    }
    return Optional.empty();
  }

  private double along() {
    return own.line().foot(mark.position()).along();
  }

  /** Metres along the fairway for metres in the boat's direction. */
  private double ahead(double metres) {
    return travel == Travel.WITH ? metres : -metres;
  }

  private Afloat boat(double before) {
    double along = along() - ahead(before);
    Bearing course = own.line().bearingAt(along);
    Bearing heading = travel == Travel.WITH ? course : course.reciprocal();
    return new Afloat(practice, water, own.line().at(along).rounded(), Afloat.whole(heading));
  }

  /** Whether the fairway is long enough for her whole track. */
  private boolean isWithin(double before) {
    double first = along() - ahead(before);
    double last = along() + ahead(BEHIND);
    return Math.min(first, last) >= 0 && Math.max(first, last) <= own.line().length();
  }

  /** Whether she lies in her own channel alone, and either one tells the same way of travel. */
  private boolean isTold(Afloat boat) {
    return !water.served(mark).orElseThrow().contains(boat.boat())
        && own.direction(mark.position()).travel(boat.heading()).filter(travel::equals).isPresent()
        && water
            .served(mark)
            .orElseThrow()
            .direction(mark.position())
            .travel(boat.heading())
            .filter(travel::equals)
            .isPresent();
  }

  /** Whether only the side that the rules do not give has the water. */
  private boolean isOverruled(Afloat boat) {
    Optional<Side> rule = SideRules.side(practice, mark.kind(), travel, null);
    if (rule.isEmpty()) {
      return false;
    }
    Polyline right = track(own, mark, travel, boat.boat(), rule.get().opposite());
    Polyline wrong = track(own, mark, travel, boat.boat(), rule.get());
    return water.depths().contains(right)
        && water.depths().contains(wrong)
        && Afloat.KEEL.isSafe(least(right))
        && isShutOff(wrong);
  }

  /** Whether she touches before she is round the mark, whether she turns to it soon or late. */
  private boolean isShutOff(Polyline wrong) {
    int round = wrong.points().size();
    while (beyond(wrong.points().get(round - 1)) <= 0) {
      round--;
    }
    Position there = wrong.points().get(round - 1);
    Polyline late = new Polyline(wrong.points().subList(0, round));
    return Afloat.KEEL.groundsSurely(least(late))
        && Afloat.KEEL.groundsSurely(least(Polyline.of(wrong.start(), there)));
  }

  /** Metres by which a place lies on the far side of the mark; negative on the near one. */
  private double beyond(Position place) {
    double mine = own.line().foot(mark.position()).off();
    return own.line().foot(place).off() * Math.signum(mine) - Math.abs(mine);
  }

  private double least(Polyline track) {
    return water.sail(track, Afloat.KEEL).leastDepth();
  }

  private Situation situation(Afloat boat) {
    Bearing buoyage = Afloat.whole(own.direction(mark.position()).bearing());
    return new Situation(
        boat.heading(), travel, buoyage, TimeOfDay.DAY, View.NEAR, null, null, null);
  }

  /** What becomes of the boat of a scenario that leaves its mark on a side. */
  static Way way(Scenario scenario, Side side) {
    Sailing sailing = Afloat.sailing(scenario);
    PlacedMark mark = sailing.marks().get(0);
    Fairway own = own(sailing.water(), mark, sailing.boat());
    Polyline track = track(own, mark, scenario.situation().travel(), sailing.boat(), side);
    return Way.sailed(sailing.water(), sailing.keel(), track);
  }

  private static Fairway own(Waterway water, PlacedMark mark, Position boat) {
    for (Fairway each : water.fairways()) {
      if (!each.id().equals(mark.serves()) && each.line().foot(boat).distance() < 1) {
        return each;
      }
    }
    throw new IllegalStateException("the boat lies in no channel");
  }

  /** From the boat along her channel and past the mark, round it where it is left so. */
  static Polyline track(Fairway own, PlacedMark mark, Travel travel, Position boat, Side side) {
    Foot foot = own.line().foot(mark.position());
    double forth = travel == Travel.WITH ? 1 : -1;
    boolean toStarboard = foot.off() * forth > 0;
    boolean stays = toStarboard == (side == Side.LEAVE_TO_STARBOARD);
    double beyond = foot.off() + Math.signum(foot.off()) * OFF;
    double start = -Math.abs(own.line().foot(boat).along() - foot.along());
    List<Position> track = new ArrayList<>(List.of(boat));
    for (double gone = start + LEG; gone <= BEHIND; gone += LEG) {
      if (stays || Math.abs(gone) >= ROUND) {
        track.add(own.line().at(foot.along() + forth * gone).rounded());
      } else if (gone + LEG >= ROUND) {
        track.add(own.line().beside(foot.along() - forth * BESIDE, beyond).rounded());
        track.add(own.line().beside(foot.along() + forth * BESIDE, beyond).rounded());
      }
    }
    return Polyline.through(track);
  }
}
