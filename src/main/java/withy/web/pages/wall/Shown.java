package withy.web.pages.wall;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;
import withy.core.hydrography.Blueprint;
import withy.core.hydrography.DrawnWaters;
import withy.core.mark.Practice;
import withy.web.Visit;
import withy.web.pages.Address;

/**
 * What is shown on the wall; the address of the page holds all of it.
 *
 * @param water the name of the stretch of water
 * @param goal the id of the fairway that is sailed; empty for the main one
 * @param step at which the voyage is held, from 0
 * @param away which of the marks was taken away, from 0; negative for none
 * @param told whether the class was told what stood there
 * @param at a place that is looked at; null for none
 * @param schoolClass the id of the class that is in the room; empty for none
 */
record Shown(
    String water,
    Practice practice,
    String goal,
    boolean inbound,
    boolean night,
    int step,
    int away,
    boolean told,
    @Nullable Position at,
    String schoolClass) {
  static final String PATH = "/wall";
  private static final String FIRST = DrawnWaters.id(Blueprint.HARBOUR_ENTRANCE, 1);
  private static final int NONE = -1;

  static Shown of(Visit visit) {
    return new Shown(
        asked(visit, "water").isEmpty() ? FIRST : asked(visit, "water"),
        practice(asked(visit, "practice")),
        asked(visit, "goal"),
        !asked(visit, "way").equals("out"),
        asked(visit, "time").equals("night"),
        Math.max(0, number(asked(visit, "step"), 0)),
        number(asked(visit, "away"), NONE),
        asked(visit, "told").equals("yes"),
        place(asked(visit, "at")).orElse(null),
        asked(visit, "class"));
  }

  private static String asked(Visit visit, String name) {
    String value = visit.context().queryParam(name);
    return value == null ? "" : value;
  }

  private static Practice practice(String word) {
    return Practice.values().stream()
        .filter(each -> each.id().equals(word))
        .findFirst()
        .orElse(Practice.IALA_A);
  }

  private static int number(String digits, int otherwise) {
    return digits.matches("[0-9]{1,6}") ? Integer.parseInt(digits) : otherwise;
  }

  private static Optional<Position> place(String typed) {
    if (!typed.matches("-?[0-9]{1,6}(\\.[0-9]{1,3})?,-?[0-9]{1,6}(\\.[0-9]{1,3})?")) {
      return Optional.empty();
    }
    int comma = typed.indexOf(',');
    return Optional.of(
        new Position(
            Double.parseDouble(typed.substring(0, comma)),
            Double.parseDouble(typed.substring(comma + 1))));
  }

  /** Another stretch of water, from the beginning. */
  Shown in(String other) {
    return new Shown(other, practice, "", inbound, night, 0, NONE, false, null, schoolClass);
  }

  /** The same water as another practice marks it. */
  Shown by(Practice other) {
    return new Shown(water, other, goal, inbound, night, step, away, told, at, schoolClass);
  }

  /** The voyage by another fairway, from the beginning. */
  Shown to(String other) {
    return new Shown(water, practice, other, inbound, night, 0, away, told, null, schoolClass);
  }

  Shown sailing(boolean in) {
    return new Shown(water, practice, goal, in, night, 0, away, told, null, schoolClass);
  }

  Shown atNight(boolean dark) {
    return new Shown(water, practice, goal, inbound, dark, step, away, told, at, schoolClass);
  }

  Shown step(int other) {
    return new Shown(water, practice, goal, inbound, night, other, away, told, at, schoolClass);
  }

  Shown without(int mark) {
    return new Shown(water, practice, goal, inbound, night, step, mark, false, null, schoolClass);
  }

  Shown withAllMarks() {
    return without(NONE);
  }

  Shown telling() {
    return new Shown(water, practice, goal, inbound, night, step, away, true, at, schoolClass);
  }

  Address address() {
    return address(PATH);
  }

  Address address(String path) {
    return Address.of(path)
        .with("water", water)
        .with("practice", practice.id())
        .with("goal", goal)
        .with("way", inbound ? "" : "out")
        .with("time", night ? "night" : "")
        .with("step", step == 0 ? "" : Integer.toString(step))
        .with("away", away < 0 ? "" : Integer.toString(away))
        .with("told", told ? "yes" : "")
        .with("class", schoolClass);
  }
}
