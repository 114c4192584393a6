package withy.core.measurement;

/**
 * A misconception in a class.
 *
 * @param learners how many most likely hold it
 * @param expected how many hold it, each counted by the chance that it is so
 */
public record Belief(String misconception, int learners, double expected) {}
