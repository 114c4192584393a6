package withy.core.item;

import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.geometry.Bearing;
import withy.core.mark.Appearance;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkGroup;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.mark.Waters;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.View;

/**
 * Situations in which the side of a fixed mark is asked, and of marks in waters with rules of their
 * own. One item in so many is about these waters or about stakes; ours, no source.
 */
final class FixedSides {
  private static final int WATERWAY = 3;
  private static final int STAKES = 4;
  private static final int RIVER = 4;

  private FixedSides() {}

  static boolean has(Practice practice) {
    return !handed(practice, FixedSides::isBeacon).isEmpty();
  }

  /** Beacon or daybeacon of a hand, a mark of the Intracoastal Waterway, or a stake. */
  static Scenario drawn(Task task) {
    Practice practice = task.practice();
    List<MarkDescription> waterway = handed(practice, in(Waters.INTRACOASTAL));
    if (!waterway.isEmpty() && task.chance().oneIn(WATERWAY)) {
      return waterway(task, waterway);
    }
    List<MarkDescription> stakes = handed(practice, each -> each.group() == MarkGroup.WITHIES);
    boolean stake = !stakes.isEmpty() && task.chance().oneIn(STAKES);
    MarkDescription mark =
        task.chance().pick(stake ? stakes : handed(practice, FixedSides::isBeacon));
    return seen(task, mark, Drawn.near(task, mark), View.NEAR, null);
  }

  /** Whether this item is to be about the lights of the Western Rivers. */
  static boolean onRiver(Task task) {
    boolean rivers = !handed(task.practice(), in(Waters.WESTERN_RIVERS)).isEmpty();
    return rivers && task.chance().oneIn(RIVER);
  }

  /** A light of the Western Rivers, where the rhythm tells the side. */
  static Scenario river(Task task) {
    Chance chance = task.chance();
    MarkDescription mark = chance.pick(handed(task.practice(), in(Waters.WESTERN_RIVERS)));
    Appearance shown =
        mark.look()
            .appearance(
                chance.pick(mark.look().bodies()), false, chance.pick(mark.look().lights()));
    return seen(task, mark, shown, View.LIGHT, Waters.WESTERN_RIVERS);
  }

  /** Two in three symbols that tell a side contradict the colour. */
  private static Scenario waterway(Task task, List<MarkDescription> waterway) {
    Chance chance = task.chance();
    MarkDescription symbol = chance.pick(waterway);
    boolean agrees = chance.oneIn(3);
    boolean any = !Objects.requireNonNull(symbol.look().symbol()).decidesSide();
    MarkDescription mark =
        chance.pick(
            handed(
                task.practice(),
                each ->
                    (each.group() == MarkGroup.LATERAL || isBeacon(each))
                        && (any || (each.passing() == symbol.passing()) == agrees)));
    Appearance shown = Drawn.near(task, mark).bearing(symbol.look().symbol());
    return seen(task, mark, shown, View.NEAR, Waters.INTRACOASTAL);
  }

  private static Scenario seen(
      Task task, MarkDescription described, Appearance shown, View view, @Nullable Waters waters) {
    Chance chance = task.chance();
    Travel travel = chance.oneIn(2) ? Travel.WITH : Travel.AGAINST;
    Bearing buoyage = Drawn.bearing(chance);
    Bearing heading = Drawn.heading(travel, buoyage, chance);
    SightedMark mark = Drawn.sighted(task, described, shown, view, heading);
    Situation situation =
        new Situation(heading, travel, buoyage, task.time(), view, null, null, null).in(waters);
    return new Scenario(task.practice(), situation, List.of(mark));
  }

  private static boolean isBeacon(MarkDescription mark) {
    return mark.group() == MarkGroup.FIXED;
  }

  private static Predicate<MarkDescription> in(Waters waters) {
    return mark -> mark.waters() == waters;
  }

  /** The marks of a hand that fit. */
  private static List<MarkDescription> handed(
      Practice practice, Predicate<MarkDescription> fitting) {
    return practice.marks(each -> each.kind().isLateral() && fitting.test(each));
  }
}
