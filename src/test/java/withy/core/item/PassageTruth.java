package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import withy.core.geometry.Position;
import withy.core.mark.ChannelIntent;
import withy.core.mark.Region;
import withy.core.mark.Travel;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;
import withy.core.waterway.PlacedMark;

/**
 * What must hold of a passage, worked out from colours, places and depths alone: the boat meets the
 * marks in their order; the right side of each is that of its colour and the hand on which the
 * right track has it; that track is safe all along, and every other one touches or leads elsewhere.
 */
final class PassageTruth {
  /** Metres by which steep ground rises and falls again between two looks at it. */
  private static final double STEEP = 0.2;

  private final Item item;
  private final Scenario scenario;
  private final Sailing sailing;
  private final Passage passage;

  private PassageTruth(Item item) {
    this.item = item;
    this.scenario = item.scenario();
    this.sailing = Objects.requireNonNull(scenario.sailing());
    this.passage = (Passage) item.answer();
  }

  static void holdsOf(Item item) {
    PassageTruth truth = new PassageTruth(item);
    SailedTruth depths = new SailedTruth(truth.sailing);
    depths.marksStandThere(item.scenario().marks());
    truth.sidesAreThoseOfTheColours();
    truth.marksAreMetInOrder();
    truth.tracksAreAsTheWaterHasThem(depths);
    truth.beliefsLeadAstray();
    assertThat(passedAhead(item)).isLessThanOrEqualTo(25);
    assertThat(item.key().length()).isLessThanOrEqualTo(200);
  }

  private static double passedAhead(Item item) {
    return item.scenario().mark().bearing().angleTo(item.scenario().situation().heading());
  }

  private void sidesAreThoseOfTheColours() {
    assertThat(passage.legs()).hasSizeBetween(3, 6);
    for (Passage.Leg leg : passage.legs()) {
      PlacedMark mark = sailing.marks().get(leg.mark());
      boolean port = mark.appearance().colours().get(0).id().equals("red");
      port ^= scenario.practice().region() == Region.B;
      port ^= scenario.situation().travel() == Travel.AGAINST;
      port ^=
          mark.kind().isPreferredChannel()
              && scenario.situation().intent() == ChannelIntent.SECONDARY;
      assertThat(leg.sides().key())
          .as("%s in %s", mark, item)
          .isEqualTo(port ? "leave-to-port" : "leave-to-starboard");
      assertThat(starboard(passage.way().track().points(), mark.position()))
          .as("%s by the right track in %s", mark, item)
          .isEqualTo(!port);
    }
  }

  /** On which hand of a track the nearest leg has a place. */
  private static boolean starboard(List<Position> track, Position place) {
    int leg = nearest(track, place);
    Position from = track.get(leg - 1);
    Position to = track.get(leg);
    double across =
        (to.x() - from.x()) * (place.y() - from.y()) - (to.y() - from.y()) * (place.x() - from.x());
    return across < 0;
  }

  private static int nearest(List<Position> track, Position place) {
    double least = Double.POSITIVE_INFINITY;
    int nearest = 0;
    for (int leg = 1; leg < track.size(); leg++) {
      Position from = track.get(leg - 1);
      Position to = track.get(leg);
      double x = (from.x() + to.x()) / 2 - place.x();
      double y = (from.y() + to.y()) / 2 - place.y();
      if (x * x + y * y < least) {
        least = x * x + y * y;
        nearest = leg;
      }
    }
    return nearest;
  }

  private void marksAreMetInOrder() {
    List<Integer> met = new ArrayList<>();
    passage
        .legs()
        .forEach(
            leg ->
                met.add(
                    nearest(
                        passage.way().track().points(),
                        sailing.marks().get(leg.mark()).position())));
    assertThat(met).as("%s", item).isSorted();
    assertThat(passage.way().track().start()).isEqualTo(sailing.boat());
  }

  private void tracksAreAsTheWaterHasThem(SailedTruth depths) {
    double safe = sailing.keel().draught() + sailing.keel().margin();
    assertThat(least(depths, passage.way())).isGreaterThanOrEqualTo(safe);
    for (Passage.Leg leg : passage.legs()) {
      for (Option each : leg.sides().options()) {
        Way way = Objects.requireNonNull(each.way());
        boolean right = each.value().equals(leg.sides().key());
        double least = least(depths, way);
        assertThat(right ? least >= safe : way.fault() != null || least < sailing.keel().draught())
            .as("%s of %s", each, item)
            .isTrue();
        assertThat(way.fault() == null || sailing.marks().get(leg.mark()).serves() != null)
            .isTrue();
        assertThat(passage.way().track().points()).contains(way.track().start());
        thatOfTheAnswerFollowsIt(leg, each);
      }
    }
  }

  /** Right up to a mark and wrong there: the track of the answer ends as that of the option. */
  private void thatOfTheAnswerFollowsIt(Passage.Leg leg, Option option) {
    List<String> sides = new ArrayList<>(passage.sides(passage.key()));
    sides.set(passage.legs().indexOf(leg), option.value());
    String given = passage.word(sides);
    List<Position> track = passage.track(given).points();
    List<Position> way = Objects.requireNonNull(option.way()).track().points();
    if (given.equals(item.key())) {
      assertThat(track).isEqualTo(passage.way().track().points());
    } else {
      assertThat(track).startsWith(sailing.boat()).endsWith(way.toArray(Position[]::new));
      assertThat(passage.way().track().points())
          .startsWith(track.subList(0, track.size() - way.size() + 1).toArray(Position[]::new));
      assertThat(passage.grade(given).correct()).isFalse();
    }
  }

  private static double least(SailedTruth depths, Way way) {
    double least = depths.least(way.track().points());
    assertThat(least).isBetween(way.leastDepth() - 0.01, way.leastDepth() + STEEP);
    return least;
  }

  private void beliefsLeadAstray() {
    assertThat(passage.beliefs()).isNotEmpty();
    assertThat(passage.grade(passage.key())).isEqualTo(Grade.RIGHT);
    for (Passage.Belief each : passage.beliefs()) {
      String led = passage.led(each.misconception()).orElseThrow();
      Misconception named = Objects.requireNonNull(passage.grade(led).misconception());
      assertThat(passage.led(named)).as("%s names %s", each, named).contains(led);
    }
    for (String each : passage.foreseen()) {
      assertThat(passage.accepts(each)).isTrue();
    }
  }
}
