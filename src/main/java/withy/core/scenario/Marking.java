package withy.core.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;
import withy.core.light.LightCharacter;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.mark.MarkingRules;
import withy.core.mark.Passing;
import withy.core.mark.Practice;
import withy.core.mark.Quadrant;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.Fairway;
import withy.core.waterway.Keel;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/**
 * Marks a water as an authority would: each mark stands where the water asks for one, and its kind
 * is the one of the practice that is passed on the side where the water is.
 */
final class Marking {
  /** Metres that lateral marks stand outside the edge, and that a keel goes astray beyond them. */
  static final double OUTSIDE = 6;

  static final double ASTRAY = 38;

  /** Metres between a cardinal mark and the edge of its danger. */
  private static final double OFF_DANGER = 30;

  private static final int LEAST_SPACING = 230;
  private static final int MOST_SPACING = 340;
  private static final double FROM_THE_RIM = 90;

  private final Practice practice;
  private final Waterway water;
  private final Keel keel;
  private final Chance chance;
  private final List<PlacedMark> marks = new ArrayList<>();
  private @Nullable LightCharacter shown;

  private Marking(Practice practice, Waterway water, Keel keel, Chance chance) {
    this.practice = practice;
    this.water = water;
    this.keel = keel;
    this.chance = chance;
  }

  static List<PlacedMark> of(Practice practice, Waterway water, Keel keel, Chance chance) {
    Marking marking = new Marking(practice, water, keel, chance);
    marking.junction();
    water.fairways().forEach(marking::laterals);
    water.dangers().forEach(marking::danger);
    return marking.marks;
  }

  /** Now on one side, now on the other, numbered from the sea. */
  private void laterals(Fairway fairway) {
    boolean starboard = chance.oneIn(2);
    int odd = 1;
    int even = 2;
    double along = chance.between(120, 200);
    while (along < fairway.line().length() - FROM_THE_RIM) {
      double off = (fairway.width() / 2 + OUTSIDE) * (starboard ? 1 : -1);
      Position place = fairway.line().beside(along, off);
      if (isEdge(fairway, along, off) && isFree(fairway, place)) {
        Passing passing = starboard ? Passing.LEAVE_TO_STARBOARD : Passing.LEAVE_TO_PORT;
        MarkDescription mark = passed(passing).orElseThrow();
        boolean isOdd = mark.look().colours().get(0).id().equals("green");
        String number = Integer.toString(isOdd ? odd : even);
        odd += isOdd ? 2 : 0;
        even += isOdd ? 0 : 2;
        place(mark, place, fairway.id(), number);
      }
      starboard = !starboard;
      along += chance.between(LEAST_SPACING, MOST_SPACING);
    }
  }

  /** Whether the keel has its water inside a mark there, and grounds outside it. */
  private boolean isEdge(Fairway fairway, double along, double off) {
    double side = Math.signum(off);
    Position inside = fairway.line().beside(along, side * fairway.width() / 4);
    Position outside = fairway.line().beside(along, off + side * ASTRAY);
    return keel.isSafe(water.water(inside)) && keel.grounds(water.water(outside) + 0.1);
  }

  /** Whether a place lies in the chart, and off every other fairway. */
  private boolean isFree(Fairway own, Position place) {
    for (Fairway each : water.fairways()) {
      boolean other = !each.id().equals(own.id());
      if (other && each.line().foot(place).distance() < each.width() / 2 + 2 * ASTRAY) {
        return false;
      }
    }
    return isCharted(place);
  }

  private boolean isCharted(Position place) {
    double width = water.depths().width();
    double height = water.depths().height();
    return place.x() > FROM_THE_RIM
        && place.y() > FROM_THE_RIM
        && place.x() < width - FROM_THE_RIM
        && place.y() < height - FROM_THE_RIM;
  }

  /** The mark of a practice that is passed so, the plain one rather than one at a junction. */
  private Optional<MarkDescription> passed(Passing passing) {
    return practice.marks().stream()
        .filter(each -> each.passing() == passing && !each.look().isFixed())
        .findFirst();
  }

  /** Where a secondary channel leaves the main one, on the tip of the ground between them. */
  private void junction() {
    if (water.fairways().size() < 2 || !water.fairways().get(1).id().equals("secondary")) {
      return;
    }
    Fairway main = water.fairways().get(0);
    Fairway second = water.fairways().get(1);
    double parting = main.line().foot(second.line().start()).along();
    for (double gone = 40; gone < 420; gone += 10) {
      Position tip = between(main.line().at(parting + gone), second.line().at(gone));
      double off = main.line().foot(tip).off();
      if (Math.abs(off) > main.width() / 2 + OUTSIDE
          && second.line().foot(tip).distance() > second.width() / 2 + OUTSIDE) {
        Passing passing = off > 0 ? Passing.PREFERRED_TO_STARBOARD : Passing.PREFERRED_TO_PORT;
        passed(passing).ifPresent(mark -> place(mark, tip, main.id(), null));
        return;
      }
    }
  }

  private static Position between(Position one, Position other) {
    return new Position((one.x() + other.x()) / 2, (one.y() + other.y()) / 2);
  }

  /** A shoal is marked by the sides on which it is passed, if the practice has marks for that. */
  private void danger(Danger danger) {
    if (danger.kind() == DangerKind.BAR) {
      return;
    }
    boolean wide = danger.kind() == DangerKind.SHOAL;
    if (wide && MarkingRules.has(practice, MarkKind.NORTH_CARDINAL)) {
      for (Quadrant each : Quadrant.values()) {
        Position place = danger.at().moved(each.middle(), danger.radius() + OFF_DANGER);
        place(MarkingRules.mark(practice, MarkKind.cardinal(each)), place, null, null);
      }
    } else {
      place(MarkingRules.mark(practice, MarkKind.ISOLATED_DANGER), danger.at(), null, null);
    }
  }

  private void place(
      MarkDescription mark, Position place, @Nullable String serves, @Nullable String label) {
    MarkLook look = mark.look();
    shown = light(look);
    marks.add(
        new PlacedMark(
            mark.kind(), place.rounded(), serves, label, chance.pick(look.appearances(shown))));
  }

  /** A light that differs from that of the mark before. */
  private LightCharacter light(MarkLook look) {
    List<LightCharacter> other =
        look.lights().stream().filter(each -> !each.equals(shown)).toList();
    return chance.pick(other.isEmpty() ? look.lights() : other);
  }

  /** Marks of a fairway in the order in which a boat that comes from the sea meets them. */
  static List<PlacedMark> along(Waterway water, Fairway fairway) {
    return water.marks().stream()
        .filter(each -> fairway.id().equals(each.serves()))
        .sorted(Comparator.comparingDouble(each -> fairway.line().foot(each.position()).along()))
        .toList();
  }
}
