package withy.core.item;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.mark.Colour;
import withy.core.mark.Parity;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;

/**
 * The numbered marks of a channel from its seaward end inward, one of them without its number, as
 * they are read off a scenario. Numbers grow inward by two on each hand, and from mark to mark over
 * both hands; they are left out only where that keeps the numbers of pairs in step, odd and the
 * even one after it (33 CFR 62.43).
 */
final class NumberedChannel {
  /** Marks of both hands this near to each other along the channel are a pair, in metres. */
  private static final double ABREAST = 60;

  private final Bearing inward;
  private final List<SightedMark> marks;
  private final int asked;

  private NumberedChannel(Scenario scenario) {
    Bearing buoyage = scenario.situation().buoyage();
    if (buoyage == null) {
      throw new IllegalStateException("a channel is numbered with the direction of buoyage");
    }
    this.inward = buoyage;
    this.marks = new ArrayList<>(scenario.marks());
    this.marks.sort(Comparator.comparingDouble(this::along));
    this.asked = marks.indexOf(scenario.mark());
  }

  static NumberedChannel of(Scenario scenario) {
    return new NumberedChannel(scenario);
  }

  private double along(SightedMark mark) {
    double off = StrictMath.toRadians(inward.angleTo(mark.bearing()));
    return mark.distance() * StrictMath.cos(off);
  }

  /** The colour of the mark without its number. */
  Colour colour() {
    return colour(marks.get(asked));
  }

  /** The number that the mark bears; null where its neighbours do not tell it beyond doubt. */
  @Nullable Integer number() {
    @Nullable Integer pair = pair();
    if (pair != null) {
      return colour() == Colour.RED ? pair + 1 : pair - 1;
    }
    @Nullable Integer counted = counted();
    return counted != null && inStep(counted) ? counted : null;
  }

  /** What the marks of its own hand say. */
  private @Nullable Integer counted() {
    @Nullable Integer outer = outer();
    @Nullable Integer inner = inner();
    if (outer == null || inner == null) {
      return outer != null ? plus(outer, 2) : plus(inner, -2);
    }
    return outer + 2 == inner - 2 ? plus(outer, 2) : null;
  }

  /** Whether it lies between those of the other hand: else a number was left out, or is missing. */
  private boolean inStep(int number) {
    @Nullable Integer outer = nearest(-1, true);
    @Nullable Integer inner = nearest(1, true);
    return (outer == null || outer < number) && (inner == null || number < inner);
  }

  /** The number of the mark of the other hand abreast of it; null where it stands alone. */
  @Nullable Integer pair() {
    for (SightedMark each : marks) {
      if (otherHand(each) && abreast(each)) {
        return number(each);
      }
    }
    return null;
  }

  /** The number next to it on its own hand towards the sea; null where it is the outermost. */
  @Nullable Integer outer() {
    return nearest(-1, false);
  }

  /** The number next to it on its own hand further in; null where it is the innermost. */
  @Nullable Integer inner() {
    return nearest(1, false);
  }

  /** The number on the other hand abreast or next towards the sea; null where there is none. */
  @Nullable Integer outerOfOtherHand() {
    @Nullable Integer pair = pair();
    return pair == null ? nearest(-1, true) : pair;
  }

  @Nullable Integer innerOfOtherHand() {
    return nearest(1, true);
  }

  /** The number of the mark that comes just before it from seaward, of whichever hand. */
  @Nullable Integer before() {
    return asked == 0 ? null : number(marks.get(asked - 1));
  }

  /** The number of the mark that comes just after it, of whichever hand. */
  @Nullable Integer after() {
    return asked == marks.size() - 1 ? null : number(marks.get(asked + 1));
  }

  /** Whether two numbers of one hand are in sight, which show the way in which they grow. */
  boolean showsGrowth() {
    int red = 0;
    int green = 0;
    for (int i = 0; i < marks.size(); i++) {
      red += i != asked && colour(marks.get(i)) == Colour.RED ? 1 : 0;
      green += i != asked && colour(marks.get(i)) == Colour.GREEN ? 1 : 0;
    }
    return red > 1 || green > 1;
  }

  /** Whether another mark in sight bears the number. */
  boolean taken(int number) {
    for (int i = 0; i < marks.size(); i++) {
      if (i != asked && number(marks.get(i)) == number) {
        return true;
      }
    }
    return false;
  }

  /**
   * The number that someone gives it who has marks of its colour bear the other parity: the next of
   * that parity that no other mark bears; the right one where that parity is right.
   */
  @Nullable Integer withParity(Parity parity) {
    @Nullable Integer right = number();
    if (right == null || Parity.of(right) == parity) {
      return right;
    }
    int step = pair() != null ? (colour() == Colour.RED ? 1 : -1) : outer() != null ? 1 : -1;
    int number = right + (pair() != null ? step : -step);
    while (number > 0 && taken(number)) {
      number += 2 * step;
    }
    return number > 0 ? number : null;
  }

  private @Nullable Integer nearest(int step, boolean ofOtherHand) {
    for (int i = asked + step; i >= 0 && i < marks.size(); i += step) {
      SightedMark each = marks.get(i);
      if (otherHand(each) == ofOtherHand && !abreast(each)) {
        return number(each);
      }
    }
    return null;
  }

  private boolean otherHand(SightedMark mark) {
    return colour(mark) != colour();
  }

  private boolean abreast(SightedMark mark) {
    return StrictMath.abs(along(mark) - along(marks.get(asked))) < ABREAST;
  }

  private static @Nullable Integer plus(@Nullable Integer number, int step) {
    return number == null || number + step < 1 ? null : number + step;
  }

  private static Colour colour(SightedMark mark) {
    return mark.appearance().colours().get(0);
  }

  private static int number(SightedMark mark) {
    String label = mark.label();
    if (label == null) {
      throw new IllegalStateException("only the mark that is asked about hides its number");
    }
    return Integer.parseInt(label);
  }
}
