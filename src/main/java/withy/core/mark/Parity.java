package withy.core.mark;

import withy.core.Term;

/** Whether a number is even or odd. */
public enum Parity implements Term {
  EVEN,
  ODD;

  /** The parity of a number. */
  public static Parity of(int number) {
    return number % 2 == 0 ? EVEN : ODD;
  }

  /** The other one. */
  public Parity opposite() {
    return this == EVEN ? ODD : EVEN;
  }
}
