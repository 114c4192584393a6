package withy.core.simulation;

import withy.core.Term;

/** By what the next concept of a drill is chosen. */
public enum Policy implements Term {
  /** One concept after the other. */
  FIXED_BLOCKED,
  /** All concepts in turn, in an order that stays. */
  ROUND_ROBIN,
  /** Any concept. */
  RANDOM,
  /** As real drills do, the item included. */
  LEAST_SETTLED
}
