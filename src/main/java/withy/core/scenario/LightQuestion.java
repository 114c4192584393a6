package withy.core.scenario;

import withy.core.Term;

/** What may be asked about the light of a mark beside its character. */
public enum LightQuestion implements Term {
  /** Which kind of mark shows it. */
  MARK,
  /** Which of several rhythms a character stands for. */
  RHYTHM,
  /** Which of several lights in sight has the character on the chart. */
  WHICH_LIGHT
}
