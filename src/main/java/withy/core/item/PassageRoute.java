package withy.core.item;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.mark.ChannelIntent;
import withy.core.mark.Travel;
import withy.core.waterway.ChannelWay;
import withy.core.waterway.Fairway;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/**
 * A way that a boat may take through a stretch of water: along a fairway, and at a fork on along it
 * or into the fairway that leaves it.
 *
 * @param intent the channel wanted at the fork; null where there is none
 * @param other the way into the channel that is not wanted; null where there is no fork
 * @param parting metres along the way, before which it is that into the other channel
 * @param marks of the way, in the order in which the boat meets them
 */
record PassageRoute(
    ChannelWay way,
    Travel travel,
    @Nullable ChannelIntent intent,
    @Nullable ChannelWay other,
    double parting,
    List<PlacedMark> marks) {
  /** Metres before a fork from which the ways into its channels are told apart. */
  private static final double BEFORE_FORK = 90;

  /** Metres behind a fork from which a boat is in the channel that leaves there. */
  private static final double BEHIND_FORK = 60;

  PassageRoute {
    marks = List.copyOf(marks);
  }

  /** All ways through a water with or against its direction, whatever there is on them. */
  static List<PassageRoute> of(Waterway water, Travel travel) {
    List<PassageRoute> routes = new ArrayList<>();
    for (Fairway main : water.fairways()) {
      Optional<Fork> fork = Fork.of(water, main);
      if (fork.isPresent()) {
        routes.add(fork.get().preferred(water).sailed(travel));
        routes.add(fork.get().secondary(water).sailed(travel));
      } else if (water.fairways().stream().noneMatch(each -> leaves(each, main))) {
        ChannelWay way = new ChannelWay(main.line(), main.width());
        routes.add(
            new PassageRoute(way, Travel.WITH, null, null, 0, serving(water, main)).sailed(travel));
      }
    }
    return routes;
  }

  private static boolean leaves(Fairway main, Fairway second) {
    return !main.equals(second) && main.contains(second.line().start());
  }

  private static List<PlacedMark> serving(Waterway water, Fairway fairway) {
    return water.marks().stream()
        .filter(each -> fairway.id().equals(each.serves()) && each.kind().isLateral())
        .toList();
  }

  /** Where a fairway leaves another one, marked as the practice marks it. */
  private record Fork(Fairway main, Fairway second, PlacedMark mark) {
    static Optional<Fork> of(Waterway water, Fairway main) {
      for (Fairway second : water.fairways()) {
        for (PlacedMark mark : water.marks()) {
          boolean here = mark.kind().isPreferredChannel() && main.id().equals(mark.serves());
          if (here && leaves(main, second)) {
            return Optional.of(new Fork(main, second, mark));
          }
        }
      }
      return Optional.empty();
    }

    private double parting() {
      return Math.max(0, main.line().foot(second.line().start()).along() - BEFORE_FORK);
    }

    private double width() {
      return Math.min(main.width(), second.width());
    }

    private ChannelWay along() {
      return through(after(main.line(), parting()));
    }

    private ChannelWay into() {
      return through(after(second.line(), BEHIND_FORK));
    }

    /** Along the main fairway to the parting, then on. */
    private ChannelWay through(List<Position> inland) {
      double parting = parting();
      List<Position> points = new ArrayList<>(main.line().points());
      points.removeIf(each -> main.line().foot(each).along() >= parting - 1);
      points.add(main.line().at(parting));
      points.addAll(inland);
      return new ChannelWay(Polyline.through(points), width());
    }

    private static List<Position> after(Polyline line, double along) {
      List<Position> points = new ArrayList<>(line.points());
      points.removeIf(each -> line.foot(each).along() <= along + 1);
      return points;
    }

    PassageRoute preferred(Waterway water) {
      List<PlacedMark> marks = new ArrayList<>(serving(water, main));
      marks.add(mark);
      return new PassageRoute(
          along(), Travel.WITH, ChannelIntent.PREFERRED, into(), parting(), marks);
    }

    PassageRoute secondary(Waterway water) {
      List<PlacedMark> marks = new ArrayList<>(serving(water, main));
      double parting = parting();
      marks.removeIf(each -> main.line().foot(each.position()).along() > parting);
      marks.addAll(serving(water, second));
      marks.add(mark);
      return new PassageRoute(
          into(), Travel.WITH, ChannelIntent.SECONDARY, along(), parting, marks);
    }
  }

  /** The same way, sailed so; marks in the order in which they are then met. */
  private PassageRoute sailed(Travel wanted) {
    boolean with = wanted == Travel.WITH;
    ChannelWay own = with ? way : reversed(way);
    List<PlacedMark> met = new ArrayList<>(marks);
    met.sort(Comparator.comparingDouble(each -> own.along(each.position())));
    return new PassageRoute(
        own,
        wanted,
        intent,
        other == null || with ? other : reversed(other),
        with ? parting : own.line().length() - parting,
        met);
  }

  private static ChannelWay reversed(ChannelWay way) {
    return new ChannelWay(way.line().reversed(), way.width());
  }

  double along(PlacedMark mark) {
    return way.along(mark.position());
  }

  ChannelWay otherWay() {
    return Objects.requireNonNull(other, "there is no fork");
  }
}
