package withy.web.pages.marks;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.MarkDescription;
import withy.core.mark.NumberRules;
import withy.core.mark.Numbering;
import withy.core.mark.Parity;
import withy.core.mark.Practice;
import withy.core.mark.Retroreflector;
import withy.drawing.Lettering;
import withy.drawing.LightStrip;
import withy.drawing.LightView;
import withy.drawing.MarkDrawing;
import withy.drawing.Svg;

/** The pictures of a mark of a practice. */
final class MarkPictures {
  private MarkPictures() {}

  /**
   * The mark as it is shown; at night its most usual light and the strip of it.
   *
   * @param together for how many lights in one field of view the light is drawn small enough
   */
  static List<Svg> of(Practice practice, MarkDescription mark, Showing showing, int together) {
    return switch (showing.sight()) {
      case DAY -> List.of(near(practice, mark, showing.torch()));
      case AFAR -> List.of(MarkDrawing.distant(mark.look().typical()));
      case NIGHT -> light(mark.look().lights(), together);
    };
  }

  private static Svg near(Practice practice, MarkDescription mark, boolean torch) {
    List<Retroreflector> sheeting = torch ? mark.look().retroreflectors() : List.of();
    return MarkDrawing.near(mark.look().typical(), label(practice, mark), sheeting);
  }

  /** The first of some lights and its strip; the dark where there is none. */
  private static List<Svg> light(List<LightCharacter> lights, int together) {
    return lights.isEmpty()
        ? List.of(LightView.unlit())
        : List.of(LightView.of(lights.get(0).timeline(), together), strip(lights.get(0)));
  }

  static Svg strip(LightCharacter light) {
    return LightStrip.of(light.timeline(), Lettering.ENGLISH, true);
  }

  static Svg shape(Practice practice, MarkDescription mark, Appearance appearance) {
    return MarkDrawing.near(appearance, label(practice, mark));
  }

  /** The least number of its side, or the letters that such marks bear. */
  private static @Nullable String label(Practice practice, MarkDescription mark) {
    if (mark.numbering() == Numbering.PRIV) {
      return "PRIV";
    }
    if (mark.numbering() != Numbering.NUMBERED) {
      return null;
    }
    return NumberRules.parity(practice.region(), mark.kind())
        .map(parity -> parity == Parity.ODD ? "1" : "2")
        .orElse(null);
  }
}
