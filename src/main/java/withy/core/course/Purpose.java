package withy.core.course;

import withy.core.Term;

/** What a session of a course is for. */
public enum Purpose implements Term {
  /** Something is met for the first time, mixed with all that was met before. */
  FIRST_MEETING,
  /** All that was met comes back, mixed. */
  RETURN,
  /** Shows who is ready, while there is still time to act on it. */
  READINESS,
  /** The last look before the practical: the passage, or all concepts where none is sailed. */
  REHEARSAL
}
