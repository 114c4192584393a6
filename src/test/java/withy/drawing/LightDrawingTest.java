package withy.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import withy.core.light.LightCharacter;
import withy.core.light.LightTimeline;
import withy.core.light.Phase;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;

class LightDrawingTest {
  private static final double FOUR_TIMES = 4;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Q W",
        "VQ(9) W 10s",
        "Q(6)+LFl W 15s",
        "Fl(2+1) R 6s",
        "Mo(A) W 8s",
        "Iso G 4s",
        "Oc(2) W 12s",
        "Al.Oc.BuY.3s",
        "UQ G"
      })
  void turnsTheLightOnAndOffAtItsTrueTimes(String character) {
    LightTimeline timeline = LightCharacter.parse(character).timeline();
    Element opacity = animation(MarkDrawing.night(timeline, Lettering.ENGLISH, true), "opacity");
    double period = timeline.periodMillis().orElseThrow();
    assertThat(opacity.getAttribute("dur")).isEqualTo(SvgWriter.decimal(period / 1000, 1000) + "s");
    assertThat(opacity.getAttribute("calcMode")).isEqualTo("discrete");
    List<Double> times = numbers(opacity.getAttribute("keyTimes"));
    List<Double> values = numbers(opacity.getAttribute("values"));
    assertThat(times).hasSameSizeAs(timeline.phases()).isSorted();
    double elapsed = 0;
    for (int i = 0; i < times.size(); i++) {
      Phase phase = timeline.phases().get(i);
      assertThat(times.get(i) * period).isCloseTo(elapsed, within(1.0));
      assertThat(values.get(i) == 0).isEqualTo(phase.dark());
      elapsed += phase.millis();
    }
  }

  @Test
  void changesTheColourOfAnAlternatingLight() {
    LightTimeline timeline = LightCharacter.parse("Al.Oc.BuY.3s").timeline();
    Element fill = animation(MarkDrawing.night(timeline, Lettering.ENGLISH, true), "fill");
    assertThat(fill.getAttribute("values"))
        .contains(Palette.BLUE_LIGHT.toString(), Palette.YELLOW_LIGHT.toString());
  }

  @Test
  void leavesAFixedLightAlone() {
    Svg svg = MarkDrawing.night(LightCharacter.parse("F R"));
    assertThat(svg.text()).doesNotContain("animate").contains(Palette.RED_LIGHT.toString());
  }

  /** Without a view box of its own, what stands in the outermost element keeps its CSS pixels. */
  @Test
  void keepsTheLightAtMostFortyPixelsAcrossWhateverTheScreen() {
    Svg svg = MarkDrawing.night(LightCharacter.parse("Q W"));
    List<Element> elements = Pictures.elements(svg);
    Element root = elements.get(0);
    assertThat(root.hasAttribute("viewBox")).isFalse();
    for (Element each : elements) {
      if (each.getTagName().equals("circle")) {
        assertThat(Double.parseDouble(each.getAttribute("r"))).isLessThanOrEqualTo(20);
        Element holder = (Element) each.getParentNode().getParentNode();
        assertThat(holder.hasAttribute("viewBox")).isFalse();
        assertThat(holder.getParentNode()).isSameAs(root);
      }
    }
  }

  @Test
  void nothingButTheLightFollowsTheRhythm() {
    for (Element each : Pictures.elements(MarkDrawing.night(LightCharacter.parse("VQ W")))) {
      if (each.getTagName().equals("animate")) {
        for (Element lit : children((Element) each.getParentNode())) {
          assertThat(lit.getTagName()).isIn("animate", "circle");
        }
      }
    }
  }

  @Test
  void neverFlashesHarmfullyEvenAtFourTimesTheSize() {
    assertThat(FlashSafety.litArea()).isLessThan(1257);
    for (Practice practice : Practice.values()) {
      for (MarkKind kind : MarkingRules.kinds(practice)) {
        for (LightCharacter each : MarkingRules.look(practice, kind).lights()) {
          assertThat(FlashSafety.safe(each.timeline(), 1, FOUR_TIMES)).as(each.toString()).isTrue();
        }
      }
    }
  }

  /** The narrowest cards of the reference, on a phone and zoomed in. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 1.25, 1.5, 2, 3, FOUR_TIMES})
  void lightsInRowsAreSafeAsFarApartAsTheReferenceSetsThem(double zoom) {
    assertThat(FlashSafety.safeInRows(164, 180, zoom)).isTrue();
    assertThat(FlashSafety.safeInRows(40, 40, zoom)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void lightsSideBySideCoverTogetherNoMoreThanOneAlone(int together) {
    Svg svg = LightView.of(LightCharacter.parse("UQ W").timeline(), together);
    double widest =
        Pictures.elements(svg).stream()
            .filter(each -> each.getTagName().equals("circle"))
            .mapToDouble(each -> Double.parseDouble(each.getAttribute("r")))
            .max()
            .orElseThrow();
    double lit = together * Math.PI * widest * widest * FOUR_TIMES * FOUR_TIMES;
    assertThat(lit).isLessThanOrEqualTo(FlashSafety.SAFE_AREA);
    assertThat(Pictures.elements(svg).get(0).hasAttribute("viewBox")).isFalse();
  }

  @Test
  void callsManyFastLightsAtOnceUnsafe() {
    LightTimeline fast = LightCharacter.parse("UQ G").timeline();
    assertThat(FlashSafety.safe(fast, 1, FOUR_TIMES)).isTrue();
    assertThat(FlashSafety.safe(fast, 2, FOUR_TIMES)).isFalse();
    assertThat(FlashSafety.safe(fast, 1, 5)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Q W", "VQ(9) W 10s", "Q(6)+LFl W 15s", "Fl(2+1) R 6s", "Mo(A) W 8s"})
  void stripShowsAtLeastOnePeriodAndNeverTheCharacter(String character) {
    LightCharacter light = LightCharacter.parse(character);
    Svg strip = LightStrip.of(light.timeline(), Lettering.ENGLISH, false);
    double lit = 0;
    double whole = 0;
    for (Element each : Pictures.elements(strip)) {
      if (each.getAttribute("fill").equals(Palette.ECLIPSE.toString())) {
        whole = Double.parseDouble(each.getAttribute("width"));
      } else if (each.getTagName().equals("rect") && each.hasAttribute("y")) {
        lit += each.getAttribute("fill").equals("none") ? 0 : width(each);
      }
    }
    assertThat(lit / whole).isCloseTo(litShare(light.timeline()), within(0.01));
    assertThat(texts(strip)).allMatch(each -> each.matches("[0-9.]+|s"));
  }

  @Test
  void namesColoursByLettersWhereTheyAreNotAsked() {
    LightTimeline wreck = LightCharacter.parse("Al.Oc.BuY.3s").timeline();
    assertThat(texts(LightStrip.of(wreck, Lettering.ENGLISH, true))).contains("Bu 1", "Y 1");
    LightTimeline port = LightCharacter.parse("Fl R 4s").timeline();
    assertThat(texts(LightStrip.of(port, Lettering.ENGLISH, true))).contains("R");
  }

  @Test
  void writesSecondsAsAnotherLanguageDoes() {
    Lettering french =
        new Lettering("N", "E", "S", "O", "s", ',', "m", "encablure", "encablures", "Barre");
    LightTimeline quick = LightCharacter.parse("Q W").timeline();
    assertThat(texts(LightStrip.of(quick, french, false))).contains("0,5").doesNotContain("0.5");
    assertThat(french.bearing(270)).isEqualTo("O");
    assertThat(french.bearing(-355)).isEqualTo("005");
  }

  private static double width(Element rect) {
    return Double.parseDouble(rect.getAttribute("width"));
  }

  private static double litShare(LightTimeline timeline) {
    double lit = 0;
    double all = 0;
    for (Phase each : timeline.phases()) {
      lit += each.dark() ? 0 : each.millis();
      all += each.millis();
    }
    return lit / all;
  }

  private static List<String> texts(Svg svg) {
    return Pictures.elements(svg).stream()
        .filter(each -> each.getTagName().equals("text"))
        .map(Element::getTextContent)
        .toList();
  }

  private static List<Element> children(Element parent) {
    List<Element> children = new ArrayList<>();
    for (int i = 0; i < parent.getChildNodes().getLength(); i++) {
      children.add((Element) parent.getChildNodes().item(i));
    }
    return children;
  }

  private static Element animation(Svg svg, String attribute) {
    return Pictures.elements(svg).stream()
        .filter(each -> each.getAttribute("attributeName").equals(attribute))
        .findFirst()
        .orElseThrow();
  }

  private static List<Double> numbers(String list) {
    return Arrays.stream(list.split(";", -1)).map(Double::valueOf).toList();
  }
}
