package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import withy.core.geometry.Bearing;
import withy.core.mark.MarkKind;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;

/**
 * The number of a mark worked out anew: every number up to a hundred is tried, and one alone keeps
 * all that is known of a channel, along either hand and from mark to mark over both.
 */
final class ChannelTruth {
  private final Scenario scenario;
  private final double inward;

  private ChannelTruth(Scenario scenario) {
    this.scenario = scenario;
    this.inward = Objects.requireNonNull(scenario.situation().buoyage()).degrees();
  }

  static String number(Scenario scenario) {
    ChannelTruth truth = new ChannelTruth(scenario);
    truth.marksStandOnTheirHands();
    truth.marksFollowAsTheyAreMet();
    truth.neitherHandGetsAheadOfTheOther();
    List<Integer> possible = new ArrayList<>();
    for (int number = 1; number <= 100; number++) {
      if (truth.keepsTheRules(number)) {
        possible.add(number);
      }
    }
    assertThat(possible).as(scenario.toString()).hasSize(1);
    return possible.get(0).toString();
  }

  private boolean keepsTheRules(int number) {
    SightedMark asked = scenario.mark();
    boolean keeps = red(asked) == (number % 2 == 0);
    boolean paired = false;
    for (SightedMark each : others()) {
      int other = number(each);
      assertThat(other % 2 == 0).isEqualTo(red(each));
      double apart = along(each) - along(asked);
      if (StrictMath.abs(apart) < 50) {
        paired = true;
        keeps &= red(asked) ? number == other + 1 : number == other - 1;
      } else {
        keeps &= apart < 0 ? other < number : other > number;
      }
    }
    return keeps && (paired || besideItsNeighbours(number));
  }

  /** No number is left out beside a mark that has no pair. */
  private boolean besideItsNeighbours(int number) {
    int below = 0;
    int above = Integer.MAX_VALUE;
    for (SightedMark each : others()) {
      if (red(each) == red(scenario.mark())) {
        int other = number(each);
        boolean seaward = along(each) < along(scenario.mark());
        below = seaward ? Math.max(below, other) : below;
        above = seaward ? above : Math.min(above, other);
      }
    }
    return (below == 0 || number == below + 2)
        && (above == Integer.MAX_VALUE || number == above - 2)
        && (below > 0 || above < Integer.MAX_VALUE);
  }

  private void marksStandOnTheirHands() {
    for (SightedMark each : scenario.marks()) {
      boolean port = across(each) < 0;
      assertThat(each.kind().equals(port ? MarkKind.PORT_HAND : MarkKind.STARBOARD_HAND)).isTrue();
      boolean redToPort = scenario.practice().region().name().equals("A");
      assertThat(red(each)).isEqualTo(port == redToPort);
    }
  }

  private void marksFollowAsTheyAreMet() {
    boolean with = scenario.situation().travel() == Travel.WITH;
    double last = 0;
    for (SightedMark each : others()) {
      double ahead = with ? along(each) : -along(each);
      assertThat(ahead).isGreaterThan(last - 5);
      last = ahead;
    }
    assertThat(scenario.mark().label()).isNull();
  }

  private void neitherHandGetsAheadOfTheOther() {
    for (SightedMark outer : others()) {
      for (SightedMark inner : others()) {
        if (along(inner) - along(outer) > 50) {
          assertThat(number(inner)).as(scenario.toString()).isGreaterThan(number(outer));
        }
      }
    }
  }

  private static int number(SightedMark mark) {
    return Integer.parseInt(Objects.requireNonNull(mark.label()));
  }

  private List<SightedMark> others() {
    return scenario.marks().subList(1, scenario.marks().size());
  }

  private static boolean red(SightedMark mark) {
    return mark.appearance().colours().get(0).id().equals("red");
  }

  private double along(SightedMark mark) {
    return mark.distance() * StrictMath.cos(off(mark.bearing()));
  }

  private double across(SightedMark mark) {
    return mark.distance() * StrictMath.sin(off(mark.bearing()));
  }

  private double off(Bearing bearing) {
    return StrictMath.toRadians(bearing.degrees() - inward);
  }
}
