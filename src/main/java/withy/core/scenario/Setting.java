package withy.core.scenario;

import withy.core.Term;

/** The kind of water that gives a conventional direction. */
public enum Setting implements Term {
  COAST,
  HARBOUR,
  RIVER
}
