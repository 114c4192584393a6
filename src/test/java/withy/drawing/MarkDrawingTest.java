package withy.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.mark.TopmarkShape;

class MarkDrawingTest {
  private static final Pattern FILL = Pattern.compile("fill=\"(#[0-9a-f]{6})\"");
  private static final List<String> ATTRIBUTES =
      List.of(
          "xmlns",
          "aria-hidden",
          "viewBox",
          "width",
          "height",
          "x",
          "y",
          "cx",
          "cy",
          "r",
          "d",
          "transform",
          "fill",
          "fill-opacity",
          "opacity",
          "stroke",
          "stroke-width",
          "stroke-opacity",
          "stroke-linecap",
          "stroke-linejoin",
          "stroke-dasharray",
          "font-size",
          "font-weight",
          "font-family",
          "text-anchor",
          "overflow",
          "attributeName",
          "calcMode",
          "values",
          "keyTimes",
          "dur",
          "repeatCount");
  private static final List<String> ELEMENTS =
      List.of("svg", "g", "rect", "path", "circle", "text", "animate");

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void givesNothingAwayButByDrawing(Practice practice) {
    for (Svg svg : all(practice)) {
      for (Element each : Pictures.elements(svg)) {
        assertThat(each.getTagName()).isIn(ELEMENTS);
        NamedNodeMap attributes = each.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
          assertThat(attributes.item(i).getNodeName()).isIn(ATTRIBUTES);
        }
      }
      assertThat(svg.text()).doesNotContain("<!--", "<title", "<desc", "<style", "url(");
    }
  }

  @Test
  void drawsAllMarksOfAViewOnPaperOfTheSameSize() {
    Set<String> near = new LinkedHashSet<>();
    Set<String> distant = new LinkedHashSet<>();
    Set<String> night = new LinkedHashSet<>();
    for (Practice practice : Practice.values()) {
      for (Appearance each : Pictures.looks(practice)) {
        near.add(root(MarkDrawing.near(each, null)));
        distant.add(root(MarkDrawing.distant(each)));
        if (each.light() != null) {
          night.add(root(MarkDrawing.night(each.light())));
        }
      }
    }
    assertThat(near).hasSize(1);
    assertThat(distant).hasSize(1);
    assertThat(night).hasSize(1);
  }

  private static String root(Svg svg) {
    return svg.text().substring(0, svg.text().indexOf('>'));
  }

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void writesNoWordsButTheLabelItIsGiven(Practice practice) {
    for (Appearance each : Pictures.looks(practice)) {
      assertThat(texts(MarkDrawing.near(each, null))).isEmpty();
      assertThat(texts(MarkDrawing.near(each, "12"))).containsExactly("12");
      assertThat(texts(MarkDrawing.distant(each))).isEmpty();
    }
  }

  @Test
  void escapesWhatALabelHolds() {
    Appearance look = Pictures.typical(Practice.IALA_A, MarkKind.PORT_HAND);
    Svg svg = MarkDrawing.near(look, "<b>&\"'\u0000");
    assertThat(texts(svg)).containsExactly("<b>&\"'\uFFFD");
    assertThat(svg.named("a \"mark\" <by> day $1").text())
        .contains("role=\"img\" aria-label=\"a &quot;mark&quot; &lt;by&gt; day $1\"")
        .doesNotContain("aria-hidden");
  }

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void dropsEveryColourFromAfar(Practice practice) {
    Set<Set<String>> fills = new LinkedHashSet<>();
    for (Appearance each : Pictures.looks(practice)) {
      fills.add(new LinkedHashSet<>(fills(MarkDrawing.distant(each))));
    }
    assertThat(fills).hasSize(1);
  }

  @Test
  void showsTheColoursOfTheBodyFromTheTopDown() {
    Appearance east = Pictures.typical(Practice.IALA_A, MarkKind.EAST_CARDINAL);
    assertThat(east.colours()).containsExactly(Colour.BLACK, Colour.YELLOW, Colour.BLACK);
    StringBuilder bands = new StringBuilder();
    SvgWriter svg = SvgWriter.scaled(1, 1);
    Coat.of(east).paint(svg, new Surface(BodyForm.of(BodyShape.PILLAR).profile()), -144, 9);
    fills(svg.finish()).forEach(each -> bands.append(each).append(' '));
    assertThat(bands.toString()).isEqualTo("#1a1a1a #ffd100 #1a1a1a ");
  }

  @Test
  void partsRedFromBlackByALightLine() {
    Appearance danger = Pictures.typical(Practice.IALA_A, MarkKind.ISOLATED_DANGER);
    Matcher line =
        Pattern.compile("stroke=\"#ffffff\"").matcher(MarkDrawing.near(danger, null).text());
    assertThat(line.results().count()).isEqualTo(2);
  }

  @Test
  void givesAnEmergencyWreckMarkAsMuchBlueAsYellowInFourToEightStripes() {
    for (Appearance each : Pictures.looks(Practice.IALA_A, MarkKind.EMERGENCY_WRECK)) {
      List<Colour> stripes = Coat.of(each).colours();
      assertThat(each.pattern()).isEqualTo(ColourPattern.VERTICAL);
      assertThat(stripes).hasSizeBetween(4, 8);
      assertThat(stripes.stream().filter(Colour.BLUE::equals).count() * 2)
          .isEqualTo(stripes.size());
    }
  }

  @ParameterizedTest
  @EnumSource(BodyShape.class)
  void cutsStripesOfEqualWidthFromEdgeToEdge(BodyShape body) {
    Surface surface = new Surface(BodyForm.of(body).profile());
    double width = surface.x(1, -20) - surface.x(-1, -20);
    for (int stripe = 0; stripe < 4; stripe++) {
      double left = surface.x(-1 + stripe * 0.5, -20);
      assertThat(surface.x(-0.5 + stripe * 0.5, -20) - left)
          .isCloseTo(width / 4, org.assertj.core.data.Offset.offset(1e-9));
    }
  }

  @Test
  void keepsTwoConesApartEvenAt24PixelsOfTopmark() {
    double whole = TopmarkDrawing.height(TopmarkShape.TWO_CONES_UP);
    double cones = 2 * TopmarkDrawing.CONE_HEIGHT;
    double clear = whole - cones - 2 * TopmarkDrawing.GAP - 2 * TopmarkDrawing.OUTLINE;
    assertThat(clear).isCloseTo(0, org.assertj.core.data.Offset.offset(1e-9));
    double pixels = 24 / (cones + TopmarkDrawing.GAP);
    assertThat(TopmarkDrawing.GAP * pixels).isGreaterThan(2.5);
  }

  @Test
  void sinksASphereByAThird() {
    Profile sphere = BodyForm.of(BodyShape.SPHERICAL).profile();
    assertThat(-sphere.top() / 72).isBetween(0.63, 0.7);
  }

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void staysOnThePaper(Practice practice) {
    for (Appearance each : looks(practice)) {
      for (Svg svg : List.of(MarkDrawing.near(each, "8"), MarkDrawing.distant(each))) {
        for (Rectangle2D box : Extent.ofPaths(svg)) {
          assertThat(box.getMinX()).isGreaterThanOrEqualTo(0);
          assertThat(box.getMaxX()).isLessThanOrEqualTo(MarkDrawing.WIDTH);
          assertThat(box.getMinY()).isGreaterThan(3);
          assertThat(box.getMaxY()).isLessThan(MarkDrawing.HEIGHT - 2);
        }
      }
      double scale = MarkDrawing.scale(each);
      double height = MarkDrawing.height(each);
      assertThat(MarkDrawing.HORIZON + (Surface.EYE - height) * scale).isGreaterThan(6);
      assertThat(MarkDrawing.HORIZON + (Surface.EYE + 12) * scale).isLessThan(MarkDrawing.HEIGHT);
    }
  }

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void staysSmallAndUsesOnlyThePalette(Practice practice) {
    Set<String> palette = new LinkedHashSet<>();
    for (Palette each : Palette.values()) {
      palette.add(each.toString());
    }
    for (Svg svg : all(practice)) {
      assertThat(svg.text().getBytes(StandardCharsets.UTF_8).length).isLessThan(12 * 1024);
      assertThat(palette).containsAll(fills(svg));
    }
  }

  /** All that a practice describes, and under one practice whatever else can be drawn. */
  private static List<Appearance> looks(Practice practice) {
    List<Appearance> looks = new ArrayList<>(Pictures.looks(practice));
    if (practice == Practice.USA) {
      Specimens.sheets().values().forEach(each -> looks.addAll(each.values()));
    }
    return looks;
  }

  private static List<Svg> all(Practice practice) {
    List<Svg> all = new ArrayList<>();
    for (Appearance each : looks(practice)) {
      all.add(MarkDrawing.near(each, "8"));
      all.add(MarkDrawing.distant(each));
      if (each.light() != null) {
        all.add(MarkDrawing.night(each.light()));
      }
    }
    return all;
  }

  private static List<String> texts(Svg svg) {
    return Pictures.elements(svg).stream()
        .filter(each -> each.getTagName().equals("text"))
        .map(Element::getTextContent)
        .toList();
  }

  private static List<String> fills(Svg svg) {
    return FILL.matcher(svg.text()).results().map(each -> each.group(1)).toList();
  }
}
