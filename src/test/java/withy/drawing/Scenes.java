package withy.drawing;

import static withy.core.mark.Colour.BLUE;
import static withy.core.mark.Colour.RED;
import static withy.core.mark.Colour.WHITE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import withy.core.geometry.Bearing;
import withy.core.light.LightCharacter;
import withy.core.light.LightTimeline;
import withy.core.mark.Appearance;
import withy.core.mark.Board;
import withy.core.mark.BoardShape;
import withy.core.mark.ColourPattern;
import withy.core.mark.Retroreflector;
import withy.core.mark.Taper;

/** Pictures of more than one mark or light, and of sheeting. */
final class Scenes {
  private Scenes() {}

  static Map<String, Svg> all() {
    Map<String, Svg> scenes = new LinkedHashMap<>();
    Appearance front = Specimens.leading(Taper.UP);
    Appearance rear = Specimens.leading(Taper.DOWN);
    Board red = Board.of(BoardShape.RECTANGLE, RED);
    Appearance american = Specimens.board(red, ColourPattern.VERTICAL, RED, WHITE, RED);
    LightTimeline quick = LightCharacter.parse("Q R").timeline();
    LightTimeline slow = LightCharacter.parse("Iso R 6s").timeline();
    for (double each : new double[] {0, 0.3, -1, 3}) {
      String apart = "-" + SvgWriter.number(each);
      scenes.put("leading-ahead" + apart, LeadingView.day(front, rear, each, false));
      scenes.put("leading-astern" + apart, LeadingView.day(american, american, each, true));
      scenes.put("leading-night" + apart, LeadingView.night(quick, slow, each, each < 0));
    }
    scenes.put("lights-four", lights(lights(), 330, 50));
    scenes.put("lights-two", lights(lights().subList(1, 3), 350, 10));
    scenes.put("lights-all-round", lights(lights(), 180, 180));
    scenes.put("strip-alone", LightStrip.alone(quick, 6000, Lettering.ENGLISH, false));
    scenes.put("sheeting", sheeting());
    return scenes;
  }

  private static Svg lights(List<NightLights.Sighted> lights, double from, double to) {
    return NightLights.of(lights, Bearing.of(from), Bearing.of(to), Lettering.ENGLISH);
  }

  private static Svg sheeting() {
    Appearance danger = Specimens.structures().get("beacon danger");
    return MarkDrawing.near(
        Objects.requireNonNull(danger),
        null,
        List.of(Retroreflector.band(BLUE), Retroreflector.band(RED)));
  }

  private static List<NightLights.Sighted> lights() {
    return List.of(
        sighted(338, "F R"), sighted(356, "F G"), sighted(4, "F W"), sighted(45, "Al.Oc.BuY.3s"));
  }

  private static NightLights.Sighted sighted(double bearing, String character) {
    return new NightLights.Sighted(Bearing.of(bearing), LightCharacter.parse(character).timeline());
  }
}
