package withy.core.response;

import withy.core.Term;

/** How the items of a drill are chosen. */
public enum DrillKind implements Term {
  /** Each learner is asked what their answers leave open. */
  ADAPTIVE,
  /** Everybody gets the same items in the same order, to talk them over afterwards. */
  FIXED,
  /** A sample of the subject, every concept in turn, until a test decides whether one is ready. */
  READINESS,
  /**
   * Everybody gets the marks of one passage in the order in which a boat has them abeam, in from
   * the sea and out again, and then the whole of it.
   */
  REHEARSAL;

  /** Whether everybody gets the same items in the same order. */
  public boolean isAlike() {
    return this == FIXED || this == REHEARSAL;
  }
}
