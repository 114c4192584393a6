package withy.core.scenario;

import withy.core.Term;

/** Whether a scenario plays by day or at night. */
public enum TimeOfDay implements Term {
  DAY,
  NIGHT
}
