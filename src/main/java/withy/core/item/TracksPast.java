package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import withy.core.Chance;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.scenario.Clearance;
import withy.core.scenario.PlottedTrack;
import withy.core.scenario.PlottedTrack.Purpose;
import withy.core.waterway.Danger;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/** The tracks that are plotted past a danger and its mark: one that is right, and wrong ones. */
final class TracksPast {
  /** Metres before and behind the mark between which a track runs. */
  private static final double BEFORE = 430;

  private static final double BEHIND = 400;

  /** Metres before and behind the mark between which it keeps its distance. */
  private static final double BESIDE = 110;

  /** Metres by which distances that are told apart differ at least. */
  private static final double APART = 30;

  private static final double ALONGSIDE = 28;

  private static final List<Double> CABLES = List.of(0.5, 1.0, 1.5, 2.0);
  private static final List<String> LETTERS = List.of("A", "B", "C", "D");

  private final Waterway water;
  private final Danger danger;
  private final PlacedMark mark;

  /** The heading on which she comes up to the mark, and the side on which the water is. */
  private final Bearing heading;

  private final Bearing clear;

  TracksPast(Waterway water, Danger danger, PlacedMark mark, Bearing heading, Bearing clear) {
    this.water = water;
    this.danger = danger;
    this.mark = mark;
    this.heading = heading;
    this.clear = clear;
  }

  /** Where the boat is when she chooses. */
  Position boat() {
    return mark.position().moved(heading, -BEFORE).rounded();
  }

  /** Some tracks of which one is right, lettered by chance; empty where the water allows none. */
  Optional<Clearance> choice(Chance chance) {
    for (double cables : chance.shuffled(CABLES)) {
      Clearance asked = new Clearance(danger, mark, cables, List.of());
      List<Purpose> wrong = new ArrayList<>();
      for (Purpose each : chance.shuffled(List.of(Purpose.values()))) {
        if (isWrong(asked, each)) {
          wrong.add(each);
        }
      }
      if (wrong.size() > 1 && isRight(asked, line(Purpose.CLEAR, cables))) {
        return Optional.of(lettered(cables, wrong, chance));
      }
    }
    return Optional.empty();
  }

  private Clearance lettered(double cables, List<Purpose> wrong, Chance chance) {
    List<Purpose> purposes = new ArrayList<>(wrong.subList(0, Math.min(3, wrong.size())));
    purposes.add(Purpose.CLEAR);
    List<PlottedTrack> tracks = new ArrayList<>();
    for (Purpose each : chance.shuffled(purposes)) {
      tracks.add(new PlottedTrack(LETTERS.get(tracks.size()), line(each, cables), each));
    }
    return new Clearance(danger, mark, cables, tracks);
  }

  /** One track of which the distance is asked; empty where it is not deep enough. */
  Optional<Clearance> single(Chance chance) {
    Polyline line = past(chance.between(90, 330), chance.between(0, 60));
    return Afloat.KEEL.isSafe(least(line))
        ? Optional.of(
            new Clearance(danger, mark, 0, List.of(new PlottedTrack("A", line, Purpose.CLEAR))))
        : Optional.empty();
  }

  private boolean isRight(Clearance asked, Polyline track) {
    return water.depths().contains(track)
        && Afloat.KEEL.isSafe(least(track))
        && asked.off(track) > asked.cables() * Clearance.CABLE + APART;
  }

  /** A mark that stands on the danger has no wrong side. */
  private boolean isWrong(Clearance asked, Purpose purpose) {
    Polyline track = line(purpose, asked.cables());
    return purpose != Purpose.CLEAR
        && (purpose != Purpose.ANY_SIDE || mark.kind().isCardinal())
        && water.depths().contains(track)
        && (Afloat.KEEL.groundsSurely(least(track)) || isTooClose(asked, track));
  }

  private boolean isTooClose(Clearance asked, Polyline track) {
    return Afloat.KEEL.isSafe(least(track))
        && asked.off(track) < asked.cables() * Clearance.CABLE - APART;
  }

  /** What becomes of a boat on a track that was plotted. */
  static Way way(Waterway water, Clearance drawn, PlottedTrack track) {
    Way way = Way.sailed(water, Afloat.KEEL, track.line());
    boolean close = track.purpose() != Purpose.CLEAR && !Afloat.KEEL.grounds(way.leastDepth());
    return close ? way.with(Fault.TOO_CLOSE) : way;
  }

  private double least(Polyline track) {
    return water.sail(track, Afloat.KEEL).leastDepth();
  }

  private Polyline line(Purpose purpose, double cables) {
    double asked = cables * Clearance.CABLE;
    double wide = asked + (mark.position().equals(danger.at()) ? danger.radius() : 0) + 2 * APART;
    return switch (purpose) {
      case CLEAR -> past(wide, wide);
      case ALONGSIDE -> past(ALONGSIDE, ALONGSIDE);
      case HUNDREDS -> past(100 * cables, 100 * cables);
      case ANY_SIDE -> past(-asked, -asked);
      case TURN_IN -> turningIn(wide - APART);
    };
  }

  /** So many metres off the mark on its clear side; on the other side if negative. */
  private Polyline past(double off, double afterwards) {
    return Polyline.of(boat(), at(-BESIDE, off), at(BESIDE, off), at(BEHIND, afterwards));
  }

  /** Wide of the mark, and behind it over the danger. */
  private Polyline turningIn(double off) {
    Position over = danger.at();
    Bearing course = at(0, off).bearingTo(over);
    return Polyline.of(
        boat(), at(-BESIDE, off), at(0, off), over.rounded(), over.moved(course, BESIDE).rounded());
  }

  private Position at(double ahead, double off) {
    return mark.position().moved(heading, ahead).moved(clear, off).rounded();
  }
}
