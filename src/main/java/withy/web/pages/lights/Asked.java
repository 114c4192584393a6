package withy.web.pages.lights;

import withy.web.Visit;
import withy.web.pages.Address;

/**
 * What somebody asks of the light bench; the address of the page holds all of it.
 *
 * @param first a light character as typed; empty for none
 * @param second the one to compare it with
 * @param wall whether it is shown on the wall of a room
 */
record Asked(String first, String second, Pace pace, boolean wall) {
  static final String FIRST = "a";
  static final String SECOND = "b";
  private static final String PATH = "/lights";

  /** Nothing yet. */
  static final Asked NOTHING = new Asked("", "", Pace.TRUE, false);

  static Asked of(Visit visit) {
    return new Asked(
        typed(visit, FIRST),
        typed(visit, SECOND),
        Pace.read(typed(visit, "pace")),
        typed(visit, "wall").equals("on"));
  }

  private static String typed(Visit visit, String name) {
    String value = visit.context().queryParam(name);
    return value == null ? "" : value.strip();
  }

  Asked show(String character) {
    return new Asked(character, "", pace, wall);
  }

  Asked compareWith(String character) {
    return new Asked(first, character, pace, wall);
  }

  Asked at(Pace other) {
    return new Asked(first, second, other, wall);
  }

  Asked onWall(boolean shown) {
    return new Asked(first, second, pace, shown);
  }

  Address address() {
    return Address.of(PATH)
        .with(FIRST, first)
        .with(SECOND, second)
        .with("pace", pace.word())
        .with("wall", wall ? "on" : "");
  }
}
