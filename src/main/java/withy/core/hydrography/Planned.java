package withy.core.hydrography;

import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.geometry.Position;
import withy.core.light.LightCharacter;
import withy.core.mark.MarkDescription;
import withy.core.waterway.PlacedMark;

/**
 * A mark that is to be laid, before its number, its body and its light are settled.
 *
 * @param serves the id of a fairway, null for a mark that belongs to none
 */
record Planned(MarkDescription mark, Position place, @Nullable String serves) {
  Planned {
    place = place.rounded();
  }

  double away(Planned other) {
    return place.distanceTo(other.place);
  }

  /** As it looks by the book, to be tried on the depths. */
  PlacedMark unlit() {
    return new PlacedMark(mark.kind(), place, serves, null, mark.look().typical());
  }

  PlacedMark laid(@Nullable String label, @Nullable LightCharacter light, Chance chance) {
    return new PlacedMark(
        mark.kind(), place, serves, label, chance.pick(mark.look().appearances(light)));
  }
}
