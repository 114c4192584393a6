package withy.core.mark;

import withy.core.Term;

/** A surface colour of a mark. */
public enum Colour implements Term {
  RED,
  GREEN,
  YELLOW,
  BLACK,
  WHITE,
  BLUE,
  ORANGE,
  GREY
}
