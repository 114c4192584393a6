package withy.core;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Chance drawn from a seed: the same seed draws the same on any machine, since the algorithm of
 * {@link Random} is part of its specification. Shuffles and choices are our own for the same
 * reason.
 */
public final class Chance {
  private final Random random;

  private Chance(long seed) {
    this.random = new Random(seed);
  }

  /** Chance for the item at an index of a seed; neighbouring seeds and indexes draw unalike. */
  public static Chance of(long seed, long index) {
    return new Chance(scrambled(scrambled(seed) + index));
  }

  /** The finaliser of SplitMix64 (Steele, Lea, Flood 2014), on a step of the golden ratio. */
  public static long scrambled(long value) {
    long z = value + 0x9e3779b97f4a7c15L;
    z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }

  /** A whole number from 0 up to, not including, bound; every one as likely. */
  public int below(int bound) {
    return random.nextInt(bound);
  }

  /** A whole number from least to most, both included. */
  public int between(int least, int most) {
    return least + below(most - least + 1);
  }

  /** A seed for something that draws by itself. */
  public long seed() {
    return random.nextLong();
  }

  /** True in one of n draws. */
  public boolean oneIn(int n) {
    return below(n) == 0;
  }

  /** One of the things; every one as likely. */
  public <T> T pick(List<? extends T> things) {
    return things.get(below(things.size()));
  }

  /** The things in an order drawn by chance (Fisher and Yates); every order as likely. */
  public <T> List<T> shuffled(List<? extends T> things) {
    List<T> order = new ArrayList<>(things);
    for (int last = order.size() - 1; last > 0; last--) {
      int other = below(last + 1);
      T swapped = order.get(other);
      order.set(other, order.get(last));
      order.set(last, swapped);
    }
    return order;
  }
}
