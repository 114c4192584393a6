package withy.core.item;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.geometry.Bearing;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.mark.MarkingRules;
import withy.core.mark.NumberRules;
import withy.core.mark.Numbering;
import withy.core.mark.Parity;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.scenario.SightedMark;
import withy.core.scenario.View;

/** Parts of scenarios that every form draws alike. All angles are whole degrees. */
final class Drawn {
  /** How far off the bow a mark ahead may bear; ours, no source. */
  private static final int AHEAD = 25;

  /** How far a heading strays from the channel: well within the limit of with and against. */
  private static final int STRAY = 55;

  private static final String LETTERS = "ABCDEFGHJKLMNPRSTVW";

  private Drawn() {}

  static Bearing bearing(Chance chance) {
    return Bearing.of(chance.below(360));
  }

  /** A heading that lies so to the conventional direction; any for none. */
  static Bearing heading(Travel travel, Bearing buoyage, Chance chance) {
    return switch (travel) {
      case WITH -> buoyage.plus(chance.between(-STRAY, STRAY));
      case AGAINST -> buoyage.reciprocal().plus(chance.between(-STRAY, STRAY));
      case NONE -> bearing(chance);
    };
  }

  /** What stands for a kind of mark ahead of the boat, drawn from all ways to tell it. */
  static SightedMark ahead(Task task, MarkKind kind, View view, Bearing heading) {
    return ahead(task, MarkingRules.mark(task.practice(), kind), view, heading);
  }

  /** A mark ahead of the boat, drawn from all the ways in which it can be told. */
  static SightedMark ahead(Task task, MarkDescription mark, View view, Bearing heading) {
    return sighted(task, mark, () -> appearance(task, mark, view), view, heading);
  }

  /** A mark ahead of the boat that looks so. */
  static SightedMark sighted(
      Task task, MarkDescription mark, Appearance seen, View view, Bearing heading) {
    return sighted(task, mark, () -> seen, view, heading);
  }

  /** Draws the looks last, as items of old seeds did. */
  private static SightedMark sighted(
      Task task, MarkDescription mark, Supplier<Appearance> looks, View view, Bearing heading) {
    Chance chance = task.chance();
    return new SightedMark(
        mark.kind(),
        heading.plus(chance.between(-AHEAD, AHEAD)),
        distance(view, chance),
        view == View.NEAR ? label(task.practice(), mark, chance) : null,
        looks.get());
  }

  /** A mark near by that looks as others do, so that only the chart tells it. */
  static SightedMark charted(Task task, MarkDescription mark, Bearing heading) {
    Appearance seen =
        task.chance().pick(mark.look().appearances(light(mark.look(), View.NEAR, task.chance())));
    return sighted(task, mark, seen, View.NEAR, heading);
  }

  /** How a mark looks near by, one of the ways in which it can be told. */
  static Appearance near(Task task, MarkDescription mark) {
    return appearance(task, mark, View.NEAR);
  }

  private static double distance(View view, Chance chance) {
    return switch (view) {
      case NEAR -> 10.0 * chance.between(15, 90);
      case DISTANT -> 100.0 * chance.between(15, 40);
      case LIGHT -> 100.0 * chance.between(3, 30);
    };
  }

  /** Numbers on the marks of the sides, letters on others, on one in three neither. */
  private static @Nullable String label(Practice practice, MarkDescription mark, Chance chance) {
    if (mark.numbering() == Numbering.PRIV) {
      return SightedMark.PRIVATE;
    }
    if (chance.oneIn(3)) {
      return null;
    }
    return switch (mark.numbering()) {
      case NUMBERED -> number(practice, mark.kind(), chance);
      case LETTERED -> String.valueOf(LETTERS.charAt(chance.below(LETTERS.length())));
      case PRIV, RIVER_MILES, WORDED, BARE -> null;
    };
  }

  private static String number(Practice practice, MarkKind kind, Chance chance) {
    int even = 2 * chance.between(1, 15);
    boolean odd = NumberRules.parity(practice.region(), kind).orElse(Parity.EVEN) == Parity.ODD;
    return Integer.toString(odd ? even - 1 : even);
  }

  /** A bearing to a tenth of a degree, as near as a picture needs it. */
  static Bearing tenths(Bearing bearing) {
    return Bearing.of(Math.round(bearing.degrees() * 10) / 10.0);
  }

  /** A mark, drawn from all the ways in which it can be told. */
  static Appearance appearance(Task task, MarkDescription mark, View view) {
    Sight sight = task.chance().pick(Sights.of(task.practice(), mark, view));
    return sight.appearance(light(mark.look(), view, task.chance()));
  }

  /** By day one mark in four is unlit. */
  private static @Nullable LightCharacter light(MarkLook look, View view, Chance chance) {
    boolean unlit = look.lights().isEmpty() || (view != View.LIGHT && chance.oneIn(4));
    return unlit ? null : chance.pick(look.lights());
  }
}
