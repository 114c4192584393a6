package withy.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import withy.core.geometry.Bearing;
import withy.core.light.LightCharacter;
import withy.core.light.LightTimeline;

class NightLightsTest {
  private static final double FOUR_TIMES = 4;

  @Test
  void standsEachLightOverItsBearing() {
    List<Double> across = across(view(330, 50, 330, 10, 50));
    assertThat(across).hasSize(3);
    assertThat(across.get(0)).isCloseTo(20, within(0.1));
    assertThat(across.get(1)).isCloseTo(160, within(0.1));
    assertThat(across.get(2)).isCloseTo(300, within(0.1));
  }

  @Test
  void writesBearingsInThreeFiguresOrAsCompassLetters() {
    assertThat(words(view(330, 50, 10))).containsExactly("330", "345", "N", "015", "030", "045");
    assertThat(words(view(180, 180, 10))).contains("S", "W", "N", "E");
  }

  @Test
  void drawsLightsAlikeInWhateverOrderTheyAreGiven() {
    NightLights.Sighted one = sighted(340, "Fl(2) R 6s");
    NightLights.Sighted other = sighted(10, "Q W");
    NightLights.Sighted third = sighted(20, "Iso G 4s");
    assertThat(drawn(List.of(third, one, other))).isEqualTo(drawn(List.of(one, other, third)));
  }

  private static NightLights.Sighted sighted(double bearing, String character) {
    return new NightLights.Sighted(Bearing.of(bearing), LightCharacter.parse(character).timeline());
  }

  private static Svg drawn(List<NightLights.Sighted> lights) {
    return NightLights.of(lights, Bearing.of(330), Bearing.of(50), Lettering.ENGLISH);
  }

  @Test
  void refusesALightOutOfSight() {
    assertThatThrownBy(() -> view(330, 50, 60)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void makesManyLightsSoSmallThatTheyMayAllFlash() {
    LightTimeline fast = LightCharacter.parse("UQ G").timeline();
    for (int lights = 1; lights <= 6; lights++) {
      double radius = FlashSafety.radius(lights);
      double area = lights * Math.PI * radius * radius;
      assertThat(area * FOUR_TIMES * FOUR_TIMES).isLessThan(FlashSafety.SAFE_AREA);
      List<LightTimeline> all = new ArrayList<>();
      for (int i = 0; i < lights; i++) {
        all.add(fast);
      }
      assertThat(FlashSafety.safe(all, FOUR_TIMES)).isTrue();
      assertThat(FlashSafety.safe(all, 5)).isFalse();
    }
  }

  @Test
  void drawsNoDiscLargerThanItMayBe() {
    Svg svg = view(330, 50, 340, 350, 0, 10);
    for (Element each : Pictures.elements(svg)) {
      if (each.getTagName().equals("circle")) {
        assertThat(Double.parseDouble(each.getAttribute("r"))).isLessThanOrEqualTo(10);
      }
    }
  }

  @Test
  void showsStripsThatAreToBeComparedOverTheSameTime() {
    LightTimeline quick = LightCharacter.parse("Q W").timeline();
    LightTimeline slow = LightCharacter.parse("Fl(3) W 12s").timeline();
    int span = LightStrip.span(List.of(quick, slow));
    assertThat(span).isEqualTo(12_000);
    Svg strip = LightStrip.alone(quick, span, Lettering.ENGLISH, false);
    assertThat(words(strip)).contains("0", "10", "s");
    assertThat(flashes(strip)).isEqualTo(12);
    assertThat(flashes(LightStrip.alone(slow, span, Lettering.ENGLISH, false))).isEqualTo(3);
  }

  @Test
  void cutsAStripWhereItsTimeEnds() {
    LightTimeline slow = LightCharacter.parse("Iso W 10s").timeline();
    Svg strip = LightStrip.alone(slow, 12_000, Lettering.ENGLISH, false);
    double lit =
        Pictures.elements(strip).stream()
            .filter(each -> each.getAttribute("fill").equals(Palette.WHITE_LIGHT.toString()))
            .mapToDouble(each -> Double.parseDouble(each.getAttribute("width")))
            .sum();
    assertThat(lit).isCloseTo(270 * 7.0 / 12, within(0.1));
  }

  private static long flashes(Svg strip) {
    return Pictures.elements(strip).stream()
        .filter(each -> each.getAttribute("fill").equals(Palette.WHITE_LIGHT.toString()))
        .count();
  }

  private static Svg view(double from, double to, double... bearings) {
    List<NightLights.Sighted> lights = new ArrayList<>();
    for (double each : bearings) {
      LightTimeline timeline = LightCharacter.parse("Fl R 4s").timeline();
      lights.add(new NightLights.Sighted(Bearing.of(each), timeline));
    }
    return NightLights.of(lights, Bearing.of(from), Bearing.of(to), Lettering.ENGLISH);
  }

  private static List<Double> across(Svg svg) {
    return Pictures.elements(svg).stream()
        .filter(each -> each.getAttribute("overflow").equals("visible"))
        .map(each -> Double.parseDouble(each.getAttribute("x").replace("%", "")) * 3.2)
        .toList();
  }

  private static List<String> words(Svg svg) {
    return Pictures.elements(svg).stream()
        .filter(each -> each.getTagName().equals("text"))
        .map(Element::getTextContent)
        .toList();
  }
}
