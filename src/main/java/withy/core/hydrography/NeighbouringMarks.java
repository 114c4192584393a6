package withy.core.hydrography;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.geometry.Position;
import withy.core.light.LightCharacter;
import withy.core.mark.Colour;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkLook;
import withy.core.mark.Passing;
import withy.core.mark.Practice;
import withy.core.waterway.Fairway;
import withy.core.waterway.Keel;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/** Marks both channels of a water, each numbered for itself from the sea. */
final class NeighbouringMarks {
  private static final double OUTSIDE = 6;
  private static final double ASTRAY = 38;
  private static final double RIM = 70;

  private final Practice practice;
  private final Waterway water;
  private final Keel keel;
  private final Chance chance;
  private final List<PlacedMark> marks = new ArrayList<>();
  private @Nullable LightCharacter shown;

  private NeighbouringMarks(Practice practice, Waterway water, Keel keel, Chance chance) {
    this.practice = practice;
    this.water = water;
    this.keel = keel;
    this.chance = chance;
  }

  static Waterway of(Practice practice, Waterway bare, Keel keel, Chance chance) {
    NeighbouringMarks marking = new NeighbouringMarks(practice, bare, keel, chance);
    int first = 1;
    for (Fairway each : bare.fairways()) {
      marking.laterals(each, first);
      first += 10;
    }
    return new Waterway(bare.depths(), bare.tide(), bare.fairways(), bare.dangers(), marking.marks);
  }

  /** Now on one hand, now on the other; odd numbers on green and even ones on red. */
  private void laterals(Fairway fairway, int first) {
    boolean starboard = chance.oneIn(2);
    int odd = first;
    int even = first + 1;
    double along = chance.between(60, 160);
    while (along < fairway.line().length() - RIM) {
      double off = (fairway.width() / 2 + OUTSIDE) * (starboard ? 1 : -1);
      Position place = fairway.line().beside(along, off).rounded();
      if (isEdge(fairway, along, off) && isFree(fairway, place)) {
        MarkDescription mark = passed(starboard);
        boolean green = mark.look().colours().get(0) == Colour.GREEN;
        place(mark, place, fairway.id(), Integer.toString(green ? odd : even));
        odd += green ? 2 : 0;
        even += green ? 0 : 2;
      }
      starboard = !starboard;
      along += chance.between(150, 240);
    }
  }

  private boolean isEdge(Fairway fairway, double along, double off) {
    double hand = Math.signum(off);
    Position inside = fairway.line().beside(along, hand * fairway.width() / 4);
    Position outside = fairway.line().beside(along, off + hand * ASTRAY);
    return keel.isSafe(water.water(inside)) && keel.groundsSurely(water.water(outside));
  }

  /** Whether a place lies in the chart, and clear of the other channel. */
  private boolean isFree(Fairway own, Position place) {
    for (Fairway each : water.fairways()) {
      double clear = each.width() / 2 + 2 * ASTRAY;
      if (!each.id().equals(own.id()) && each.line().foot(place).distance() < clear) {
        return false;
      }
    }
    return place.x() > RIM
        && place.y() > RIM
        && place.x() < water.depths().width() - RIM
        && place.y() < water.depths().height() - RIM;
  }

  private MarkDescription passed(boolean starboard) {
    Passing passing = starboard ? Passing.LEAVE_TO_STARBOARD : Passing.LEAVE_TO_PORT;
    return practice.marks().stream()
        .filter(each -> each.passing() == passing && !each.look().isFixed())
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(practice.id() + " has no lateral marks"));
  }

  private void place(MarkDescription mark, Position place, String serves, String label) {
    MarkLook look = mark.look();
    List<LightCharacter> other =
        look.lights().stream().filter(each -> !each.equals(shown)).toList();
    shown = chance.pick(other.isEmpty() ? look.lights() : other);
    marks.add(
        new PlacedMark(mark.kind(), place, serves, label, chance.pick(look.appearances(shown))));
  }
}
