package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.hydrography.Blueprint;
import withy.core.mark.ChannelIntent;
import withy.core.mark.Practice;
import withy.core.mark.Side;
import withy.core.mark.SideRules;
import withy.core.mark.Travel;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;
import withy.core.waterway.ConventionalDirection;
import withy.core.waterway.Fairway;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/**
 * A boat before the mark where a channel divides. Inbound the wrong side leads into the other
 * channel; outbound, in the channel that she has chosen, it leads over the ground between them.
 */
final class JunctionWaters {
  private static final List<Blueprint> WATERS = List.of(Blueprint.FORK);

  /** Metres along the channel before the mark and behind it. */
  private static final double BEFORE = 280;

  private static final double BEHIND = 220;

  private static final double LEG = 40;

  private final Practice practice;
  private final Waterway water;
  private final PlacedMark mark;
  private final Travel travel;
  private final ChannelIntent intent;

  private JunctionWaters(
      Practice practice, Waterway water, PlacedMark mark, Travel travel, ChannelIntent intent) {
    this.practice = practice;
    this.water = water;
    this.mark = mark;
    this.travel = travel;
    this.intent = intent;
  }

  static Scenario drawn(Task task, Travel travel, ChannelIntent intent) {
    return task.found(WATERS, water -> in(task.practice(), water, travel, intent));
  }

  private static Optional<Scenario> in(
      Practice practice, Waterway water, Travel travel, ChannelIntent intent) {
    return water.marks().stream()
        .filter(each -> each.kind().isPreferredChannel())
        .map(each -> new JunctionWaters(practice, water, each, travel, intent).scenario())
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<Scenario> scenario() {
    Polyline wanted = line(intent);
    double from = wanted.foot(mark.position()).along() - BEFORE;
    if (from < 0 || from + BEFORE + BEHIND > wanted.length()) {
      return Optional.empty();
    }
    Bearing heading = Afloat.whole(wanted.bearingAt(from));
    Afloat afloat = new Afloat(practice, water, wanted.at(from).rounded(), heading);
    Bearing buoyage = Afloat.whole(fairway(intent).direction(mark.position()).bearing());
    Optional<Travel> told = new ConventionalDirection(buoyage).travel(heading);
    if (!told.filter(travel::equals).isPresent() || !afloat.comesUpTo(mark)) {
      return Optional.empty();
    }
    Situation situation =
        new Situation(heading, travel, buoyage, TimeOfDay.DAY, View.NEAR, intent, null, null);
    return Optional.of(afloat.before(mark, situation)).filter(this::isBorneOut);
  }

  private boolean isBorneOut(Scenario scenario) {
    Optional<Side> key = SideRules.side(practice, mark.kind(), travel, intent);
    if (key.isEmpty()) {
      return false;
    }
    Way right = way(scenario, key.get());
    Way wrong = way(scenario, key.get().opposite());
    return Afloat.KEEL.isSafe(right.leastDepth())
        && right.fault() == null
        && (Afloat.KEEL.groundsSurely(wrong.leastDepth()) || wrong.fault() != null);
  }

  /** What becomes of the boat of a scenario that leaves the mark on a side. */
  static Way way(Scenario scenario, Side side) {
    Situation situation = scenario.situation();
    Sailing sailing = Afloat.sailing(scenario);
    ChannelIntent intent =
        situation.intent() == null ? ChannelIntent.PREFERRED : situation.intent();
    return new JunctionWaters(
            scenario.practice(),
            sailing.water(),
            sailing.marks().get(0),
            situation.travel(),
            intent)
        .sailed(sailing, side);
  }

  private Way sailed(Sailing sailing, Side side) {
    boolean keeps = isLeft(line(intent), side);
    Polyline track =
        travel == Travel.WITH
            ? along(line(keeps ? intent : other()), sailing.boat())
            : OtherChannel.track(channel(intent), mark, travel, sailing.boat(), side);
    Way way = Way.sailed(water, sailing.keel(), track);
    boolean strays = !keeps && !sailing.keel().grounds(way.leastDepth());
    return strays ? way.with(Fault.WRONG_CHANNEL) : way;
  }

  /** Whether a way leaves the mark on a side. */
  private boolean isLeft(Polyline way, Side side) {
    return way.foot(mark.position()).off() > 0 == (side == Side.LEAVE_TO_STARBOARD);
  }

  private Polyline along(Polyline way, Position boat) {
    double start = way.foot(boat).along();
    double end = way.foot(mark.position()).along() + BEHIND;
    List<Position> track = new ArrayList<>(List.of(boat));
    for (double gone = start + LEG; gone < Math.min(end, way.length()); gone += LEG) {
      track.add(way.at(gone).rounded());
    }
    return new Polyline(track);
  }

  /** The way through the channel of an intent as the boat travels it. */
  private Polyline line(ChannelIntent wanted) {
    Polyline inbound = channel(wanted).line();
    return travel == Travel.WITH ? inbound : inbound.reversed();
  }

  /** The channel of an intent, the undivided part seaward of the mark included. */
  private Fairway channel(ChannelIntent wanted) {
    Fairway fairway = fairway(wanted);
    if (wanted == ChannelIntent.PREFERRED) {
      return fairway;
    }
    Polyline main = fairway(ChannelIntent.PREFERRED).line();
    double parting = main.foot(fairway.line().start()).along();
    List<Position> joined = new ArrayList<>();
    for (double gone = 0; gone < parting - 1; gone += LEG) {
      joined.add(main.at(gone));
    }
    joined.addAll(fairway.line().points());
    return new Fairway(fairway.id(), new Polyline(joined), fairway.width());
  }

  private ChannelIntent other() {
    return intent == ChannelIntent.PREFERRED ? ChannelIntent.SECONDARY : ChannelIntent.PREFERRED;
  }

  private Fairway fairway(ChannelIntent wanted) {
    return water.fairways().get(wanted == ChannelIntent.PREFERRED ? 0 : 1);
  }
}
