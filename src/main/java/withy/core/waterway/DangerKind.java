package withy.core.waterway;

import withy.core.Term;

/** What endangers a keel. */
public enum DangerKind implements Term {
  ROCK,
  WRECK,
  SHOAL,
  BAR
}
