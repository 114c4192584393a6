package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.mark.Colour;
import withy.core.mark.Parity;
import withy.core.mark.Region;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;

/**
 * Which number beliefs give the mark without one; null where a belief says nothing of the channel,
 * or where the numbers in sight belie it at a glance.
 */
final class NumberBeliefs {
  private NumberBeliefs() {}

  /** Numbers grow outward, from the land to the sea. */
  static @Nullable Integer fromTheLand(Scenario scenario) {
    NumberedChannel channel = NumberedChannel.of(scenario);
    if (channel.showsGrowth() || channel.pair() != null) {
      return null;
    }
    @Nullable Integer outer = channel.outer();
    @Nullable Integer inner = channel.inner();
    return outer != null
        ? free(channel, outer - 2)
        : inner != null ? free(channel, inner + 2) : null;
  }

  /** Numbers grow in the order in which the boat meets the marks, whichever way she goes. */
  static @Nullable Integer asMet(Scenario scenario) {
    if (scenario.situation().travel() == Travel.AGAINST) {
      return fromTheLand(scenario);
    }
    NumberedChannel channel = NumberedChannel.of(scenario);
    return channel.showsGrowth() ? null : channel.number();
  }

  /** Every mark in turn bears the next number, of whichever hand it is. */
  static @Nullable Integer consecutive(Scenario scenario) {
    NumberedChannel channel = NumberedChannel.of(scenario);
    @Nullable Integer before = channel.before();
    @Nullable Integer after = channel.after();
    if (channel.pair() != null) {
      return null;
    }
    return before != null
        ? free(channel, before + 1)
        : after != null ? free(channel, after - 1) : null;
  }

  /** Odd to port and even to starboard, which holds in region B alone. */
  static @Nullable Integer parityBySide(Scenario scenario) {
    NumberedChannel channel = NumberedChannel.of(scenario);
    Region region = scenario.practice().region();
    boolean port = channel.colour() == region.portHand();
    return channel.withParity(port ? Parity.ODD : Parity.EVEN);
  }

  /** Red odd and green even. */
  static @Nullable Integer paritySwapped(Scenario scenario) {
    NumberedChannel channel = NumberedChannel.of(scenario);
    return channel.withParity(channel.colour() == Colour.RED ? Parity.ODD : Parity.EVEN);
  }

  /** Goes on counting from the marks of the other hand. */
  static @Nullable Integer otherHand(Scenario scenario) {
    NumberedChannel channel = NumberedChannel.of(scenario);
    @Nullable Integer outer = channel.outerOfOtherHand();
    @Nullable Integer inner = channel.innerOfOtherHand();
    return outer != null
        ? free(channel, outer + 2)
        : inner != null ? free(channel, inner - 2) : null;
  }

  /** The two marks of a pair bear one number. */
  static @Nullable Integer sameAsPair(Scenario scenario) {
    return NumberedChannel.of(scenario).pair();
  }

  /** Counts on along one hand, where a number is left out to keep the pairs in step. */
  static @Nullable Integer skipIgnored(Scenario scenario) {
    NumberedChannel channel = NumberedChannel.of(scenario);
    @Nullable Integer outer = channel.outer();
    @Nullable Integer inner = channel.inner();
    if (channel.pair() == null) {
      return null;
    }
    return outer != null
        ? free(channel, outer + 2)
        : inner != null ? free(channel, inner - 2) : null;
  }

  private static @Nullable Integer free(NumberedChannel channel, int number) {
    return number < 1 || channel.taken(number) ? null : number;
  }
}
