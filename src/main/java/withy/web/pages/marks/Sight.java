package withy.web.pages.marks;

import withy.core.Term;

/** How marks are seen. */
enum Sight implements Term {
  DAY,
  /** Shapes alone. */
  AFAR,
  NIGHT;

  /** The sight that a word stands for; by day for any other word. */
  static Sight read(String word) {
    for (Sight each : values()) {
      if (each.id().equals(word)) {
        return each;
      }
    }
    return DAY;
  }
}
