package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.mark.Travel;
import withy.core.waterway.ChannelWay;
import withy.core.waterway.Keel;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/**
 * A passage along a route, past some of its marks that follow each other, with the tracks of a boat
 * that leaves each on the right side or on the wrong one.
 *
 * @param marks in the order in which the boat meets them
 * @param from metres along the route at which she begins
 * @param to metres along the route at which she ends
 */
record PassagePlan(
    Waterway water, PassageRoute route, List<PlacedMark> marks, double from, double to) {
  private static final Keel KEEL = Afloat.KEEL;

  /** Metres before the first mark, at most, from which she comes up to it. */
  private static final double BEFORE = 230;

  /** Metres behind the last mark to which she sails. */
  private static final double BEHIND = 150;

  /** Metres from a mark that she has left to where the passage begins, at least. */
  private static final double CLEAR = 40;

  /** Metres before and behind a mark between which its passing is sailed. */
  private static final double REACH = 200;

  /** Metres before the mark of a fork at which she may cross to its other channel. */
  private static final int NEAREST_CROSSING = 60;

  private static final int FARTHEST_CROSSING = 180;

  PassagePlan {
    marks = List.copyOf(marks);
  }

  /** A passage past some of the marks of a route, the first and the last of them by index. */
  static PassagePlan of(Waterway water, PassageRoute route, int first, int last) {
    List<PlacedMark> marks = route.marks().subList(first, last + 1);
    double left = first == 0 ? 0 : route.along(route.marks().get(first - 1)) + CLEAR;
    boolean ends = last == route.marks().size() - 1;
    double next =
        ends ? route.way().line().length() : route.along(route.marks().get(last + 1)) - CLEAR;
    double from = Math.max(left, route.along(marks.get(0)) - BEFORE);
    double to = Math.min(next, route.along(marks.get(marks.size() - 1)) + BEHIND);
    return new PassagePlan(water, route, marks, from, to);
  }

  /** Whether she has the first mark well ahead of her when she begins. */
  boolean begins() {
    return route.along(marks.get(0)) - from >= CLEAR;
  }

  /** The mark at the fork, if it is one of those passed. */
  @Nullable PlacedMark fork() {
    for (PlacedMark each : marks) {
      if (each.kind().isPreferredChannel()) {
        return each;
      }
    }
    return null;
  }

  /** The whole track on which every mark is left on the right side; empty if it is not safe. */
  Optional<Way> way() {
    List<Double> corners = marks.stream().map(this::begins).toList();
    return Optional.of(sailed(route.way().way(from, to, corners)))
        .filter(each -> KEEL.isSafe(each.leastDepth()) && water.depths().contains(each.track()));
  }

  /** Past one mark, as it should be left. */
  Way right(PlacedMark mark) {
    return sailed(route.way().way(begins(mark), ends(mark), List.of()));
  }

  /** Past one mark on the wrong side; empty where the water would not show that it is wrong. */
  Optional<Way> wrong(PlacedMark mark) {
    if (!mark.kind().isPreferredChannel()) {
      return grounding(route.way().round(mark, begins(mark), ends(mark)));
    }
    return route.travel() == Travel.WITH ? Optional.of(astray(mark)) : crossing(mark);
  }

  private Optional<Way> grounding(Polyline track) {
    return Optional.of(sailed(track))
        .filter(each -> KEEL.groundsSurely(each.leastDepth()) && water.depths().contains(track));
  }

  /** Into the channel that is not wanted. */
  private Way astray(PlacedMark mark) {
    ChannelWay other = route.otherWay();
    double behind = Math.min(other.along(mark.position()) + REACH, other.line().length());
    Way way = sailed(other.way(begins(mark), behind, List.of()));
    return KEEL.groundsSurely(way.leastDepth()) ? way : way.with(Fault.WRONG_CHANNEL);
  }

  /** Over the ground between the channels, before they meet. */
  private Optional<Way> crossing(PlacedMark mark) {
    ChannelWay other = route.otherWay();
    for (int before = NEAREST_CROSSING; before <= FARTHEST_CROSSING; before += 20) {
      double leaves = route.along(mark) - before;
      if (leaves > begins(mark)) {
        double enters = other.along(mark.position()) - before / 2.0;
        Polyline own = route.way().way(begins(mark), leaves, List.of());
        Polyline then = other.way(enters, other.along(mark.position()) + REACH / 2, List.of());
        List<Position> track = new ArrayList<>(own.points());
        track.addAll(then.points());
        Optional<Way> aground = grounding(new Polyline(track));
        if (aground.isPresent()) {
          return aground;
        }
      }
    }
    return Optional.empty();
  }

  private double begins(PlacedMark mark) {
    double before = route.along(mark) - REACH;
    boolean fork = mark.kind().isPreferredChannel() && route.travel() == Travel.WITH;
    return Math.max(from, fork ? Math.min(before, route.parting() - 10) : before);
  }

  private double ends(PlacedMark mark) {
    return Math.min(to, route.along(mark) + REACH);
  }

  private Way sailed(Polyline track) {
    return Way.sailed(water, KEEL, track);
  }

  /** Whether she leaves a mark to starboard if she keeps to the channel. */
  boolean leavesToStarboard(PlacedMark mark) {
    return route.way().leavesToStarboard(mark.position());
  }
}
