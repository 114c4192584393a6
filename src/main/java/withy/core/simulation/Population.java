package withy.core.simulation;

import withy.core.Chance;

/**
 * How learners are planted. On each concept one state holds, and how firmly differs from learner to
 * learner and from what the statistics take for usual (slip .10, pull .75).
 *
 * @param knows share of learners who know a concept
 * @param first share who hold the first of the two beliefs planted there
 * @param second share who hold the second; the others guess
 * @param leastSlip of one who knows, 0 to 1, up to {@code mostSlip}
 * @param leastPull of one who holds a belief, 0 to 1, up to {@code mostPull}
 * @param learning chance that a state gives way to knowing after each item on the concept
 */
public record Population(
    double knows,
    double first,
    double second,
    double leastSlip,
    double mostSlip,
    double leastPull,
    double mostPull,
    double learning) {
  /** The usual one, without learning. */
  public static final Population USUAL =
      new Population(0.70, 0.12, 0.08, 0.04, 0.16, 0.60, 0.90, 0);

  /** Whose answers follow what they hold less firmly. */
  public static final Population NOISY =
      new Population(0.70, 0.12, 0.08, 0.08, 0.25, 0.45, 0.75, 0);

  private static final int STEPS = 1 << 20;

  /** The same with another chance to learn from an item. */
  public Population learning(double other) {
    return new Population(knows, first, second, leastSlip, mostSlip, leastPull, mostPull, other);
  }

  /** The same with another share of learners who know; beliefs and guessing keep their ratio. */
  public Population knowing(double other) {
    double rest = (1 - other) / (1 - knows);
    return new Population(
        other, first * rest, second * rest, leastSlip, mostSlip, leastPull, mostPull, learning);
  }

  static double share(Chance chance) {
    return chance.below(STEPS) / (double) STEPS;
  }

  static double between(double least, double most, Chance chance) {
    return least + (most - least) * share(chance);
  }
}
