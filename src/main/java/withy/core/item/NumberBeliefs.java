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
    return counted(channel, channel.outer(), -2, channel.inner());
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
    return channel.pair() == null ? counted(channel, channel.before(), 1, channel.after()) : null;
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
    return counted(channel, channel.outerOfOtherHand(), 2, channel.innerOfOtherHand());
  }

  /** The two marks of a pair bear one number. */
  static @Nullable Integer sameAsPair(Scenario scenario) {
    return NumberedChannel.of(scenario).pair();
  }

  /** Counts on along one hand, where a number is left out to keep the pairs in step. */
  static @Nullable Integer skipIgnored(Scenario scenario) {
    NumberedChannel channel = NumberedChannel.of(scenario);
    return channel.pair() == null ? null : counted(channel, channel.outer(), 2, channel.inner());
  }

  /** A step on from the mark before it, or back from the one after it where there is none. */
  private static @Nullable Integer counted(
      NumberedChannel channel, @Nullable Integer before, int step, @Nullable Integer after) {
    return before != null
        ? free(channel, before + step)
        : after != null ? free(channel, after - step) : null;
  }

  private static @Nullable Integer free(NumberedChannel channel, int number) {
    return number < 1 || channel.taken(number) ? null : number;
  }
}
