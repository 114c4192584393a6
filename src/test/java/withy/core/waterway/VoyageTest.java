package withy.core.waterway;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import withy.core.Chance;
import withy.core.hydrography.Blueprint;
import withy.core.hydrography.DrawnWaters;
import withy.core.mark.Practice;
import withy.core.mark.Quadrant;
import withy.core.mark.Side;
import withy.core.mark.Travel;

class VoyageTest {
  private static final int WATERS = 25;

  private static Waterway water(Blueprint blueprint, long number, Practice practice) {
    return DrawnWaters.find(DrawnWaters.id(blueprint, number))
        .orElseThrow()
        .marked(practice, Chance.of(number, 1));
  }

  private static List<String> goals(Waterway water) {
    return water.fairways().isEmpty()
        ? List.of("")
        : water.fairways().stream().map(Fairway::id).toList();
  }

  @ParameterizedTest
  @EnumSource(Blueprint.class)
  void keepsHerWaterAndLeavesEveryMarkOnTheSideOfTheRules(Blueprint blueprint) {
    for (long number = 1; number <= WATERS; number++) {
      for (Practice practice : Practice.values()) {
        Waterway water = water(blueprint, number, practice);
        for (String goal : goals(water)) {
          for (boolean inbound : new boolean[] {true, false}) {
            Voyage voyage = Voyage.of(water, practice, goal, inbound);
            String name = blueprint + " " + number + " " + practice.id() + " " + goal + inbound;
            double least = water.sail(voyage.track(), Keel.CRUISER).leastDepth();
            assertThat(Keel.CRUISER.isSafe(least)).as(name + ": " + least).isTrue();
            voyage.calls().forEach(each -> requireSide(each, name));
          }
        }
      }
    }
  }

  private static void requireSide(Call call, String name) {
    if (call.side() == Side.LEAVE_TO_STARBOARD || call.side() == Side.LEAVE_TO_PORT) {
      assertThat(call.toStarboard())
          .as(name + " " + call.mark().kind() + " " + call.mark().label())
          .isEqualTo(call.side() == Side.LEAVE_TO_STARBOARD);
    }
    if (call.mark().kind().isCardinal()) {
      assertThat(call.pass()).as(name).isEqualTo(call.mark().kind().quadrant());
    }
  }

  @Test
  void callsEveryMarkOfARiverInOrderAndBackwardsOutbound() {
    Waterway water = water(Blueprint.RIVER, 3, Practice.IALA_A);
    List<PlacedMark> in = marks(Voyage.of(water, Practice.IALA_A, "", true));
    List<PlacedMark> out = marks(Voyage.of(water, Practice.IALA_A, "", false));
    assertThat(in).containsExactlyInAnyOrderElementsOf(water.marks());
    assertThat(out.get(0)).isEqualTo(in.get(in.size() - 1));
    assertThat(Voyage.of(water, Practice.IALA_A, "", false).travel()).isEqualTo(Travel.AGAINST);
  }

  private static List<PlacedMark> marks(Voyage voyage) {
    return voyage.calls().stream().map(Call::mark).toList();
  }

  @Test
  void roundsAShoalPastItsFourMarksEachOnItsOwnSide() {
    Waterway water = water(Blueprint.OFFSHORE_SHOAL, 2, Practice.IALA_B);
    Voyage clockwise = Voyage.of(water, Practice.IALA_B, "", true);
    assertThat(clockwise.calls().stream().map(Call::pass))
        .containsExactly(Quadrant.WEST, Quadrant.NORTH, Quadrant.EAST, Quadrant.SOUTH);
    assertThat(clockwise.calls()).allMatch(each -> each.side() == Side.LEAVE_TO_STARBOARD);
    assertThat(Voyage.of(water, Practice.IALA_B, "", false).calls())
        .allMatch(each -> each.side() == Side.LEAVE_TO_PORT);
  }

  @Test
  void leavesTheMarkAtAForkByTheChannelThatIsWanted() {
    int forks = 0;
    for (long number = 1; number <= WATERS; number++) {
      Waterway water = water(Blueprint.FORK, number, Practice.IALA_A);
      if (water.marks().stream().anyMatch(each -> each.kind().isPreferredChannel())) {
        Side preferred = atTheFork(Voyage.of(water, Practice.IALA_A, "main", true));
        Side secondary = atTheFork(Voyage.of(water, Practice.IALA_A, "secondary", true));
        assertThat(secondary).isEqualTo(preferred.opposite()).isNotEqualTo(preferred);
        forks++;
      }
    }
    assertThat(forks).isGreaterThan(WATERS / 2);
  }

  private static Side atTheFork(Voyage voyage) {
    return voyage.calls().stream()
        .filter(each -> each.mark().kind().isPreferredChannel())
        .findFirst()
        .map(Call::side)
        .orElseThrow();
  }

  @Test
  void stepsFromTheBeginningPastEachMarkToTheEnd() {
    Voyage voyage = Voyage.of(water(Blueprint.RIVER, 3, Practice.USA), Practice.USA, "", true);
    List<Voyage.Step> steps = voyage.steps();
    assertThat(steps).hasSize(voyage.calls().size() + 2);
    assertThat(steps).extracting(each -> each.fix().along()).isSorted();
    assertThat(steps.get(1).call()).isEqualTo(voyage.calls().get(0));
    assertThat(voyage.fixes())
        .extracting(Voyage.Fix::least)
        .isSortedAccordingTo((a, b) -> b.compareTo(a));
  }

  @Test
  void anotherRegionChangesTheMarksAndNotTheWater() {
    for (Blueprint each : Blueprint.values()) {
      Waterway a = water(each, 5, Practice.IALA_A);
      Waterway b = water(each, 5, Practice.IALA_B);
      assertThat(b.depths()).isEqualTo(a.depths());
      assertThat(b.fairways()).isEqualTo(a.fairways());
      assertThat(b.marks())
          .extracting(PlacedMark::position)
          .isEqualTo(a.marks().stream().map(PlacedMark::position).toList());
      assertThat(b.marks())
          .extracting(PlacedMark::kind)
          .isEqualTo(a.marks().stream().map(PlacedMark::kind).toList());
      boolean lateral = a.marks().stream().anyMatch(mark -> mark.kind().isLateral());
      assertThat(b.marks().equals(a.marks())).isEqualTo(!lateral);
    }
  }

  @Test
  void readsTheNamesOfDrawnWatersAndNoOthers() {
    assertThat(DrawnWaters.named("harbour-entrance-12"))
        .hasValueSatisfying(
            drawn -> {
              assertThat(drawn.blueprint()).isEqualTo(Blueprint.HARBOUR_ENTRANCE);
              assertThat(drawn.next().id()).isEqualTo("harbour-entrance-13");
            });
    assertThat(DrawnWaters.find("river-0")).isEmpty();
    assertThat(DrawnWaters.find("lagoon-3")).isEmpty();
    assertThat(DrawnWaters.find("river")).isEmpty();
    assertThat(DrawnWaters.find("river-99999999999999999999")).isEmpty();
  }
}
