package withy.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.mark.MarkKind;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;
import withy.fixture.Waters;

class ChartDrawingTest {
  private static final Polyline BEYOND =
      Polyline.of(new Position(-900, 500), new Position(900, 900), new Position(4000, 1500));

  static List<Waterway> waters() {
    return List.copyOf(ChartSheets.waters().values());
  }

  @ParameterizedTest
  @MethodSource("waters")
  void isSmallAndTheSameEveryTime(Waterway water) throws IOException {
    String chart = drawn(water, ChartOptions.plain()).text();
    assertThat(drawn(water, ChartOptions.plain()).text()).isEqualTo(chart);
    assertThat(compressed(chart)).isLessThan(15_000);
  }

  @ParameterizedTest
  @MethodSource("waters")
  void keepsEverythingInsideItsViewBox(Waterway water) {
    ChartOptions options =
        ChartOptions.plain()
            .with(BEYOND, true)
            .with(BEYOND.reversed(), false)
            .with(new Position(5000, 0), Bearing.of(90))
            .touching(new Position(-400, 0), 1);
    Svg chart = drawn(water, options);
    ChartSheet sheet = ChartSheet.of(water.depths());
    for (Element each : Pictures.elements(chart)) {
      if (each.getTagName().equals("path") || each.getTagName().equals("text")) {
        assertThat(isInside(ChartParts.box(each), sheet))
            .as("%s %s", ChartParts.box(each), each.getAttribute("d"))
            .isTrue();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("waters")
  void showsLandAndMarksAloneWithoutDepths(Waterway water) {
    List<Position> met = water.marks().stream().map(PlacedMark::position).limit(2).toList();
    ChartOptions options = ChartOptions.plain().withoutDepths().meeting(met);
    ChartLayout layout =
        ChartLayout.of(water, ChartSheet.of(water.depths()), options, Lettering.ENGLISH);
    assertThat(layout.soundings()).isEmpty();
    assertThat(layout.depths()).as("least depths over dangers").isEmpty();
    assertThat(layout.numbers()).hasSameSizeAs(met);
    assertThat(drawn(water, options).text())
        .doesNotContain(
            "fill=\"" + Palette.CHART_SHELVING,
            "fill=\"" + Palette.CHART_SHALLOW,
            "fill=\"" + Palette.CHART_DRYING);
    assertThat(drawn(water, ChartOptions.plain()).text())
        .contains("fill=\"" + Palette.CHART_SHELVING);
  }

  private static boolean isInside(Rectangle2D box, ChartSheet sheet) {
    return box.getMinX() >= 0
        && box.getMinY() >= 0
        && box.getMaxX() <= sheet.width()
        && box.getMaxY() <= sheet.height();
  }

  @Test
  void cutsAWayAtTheFrameAndTakesItUpAgain() {
    ChartSheet sheet = ChartSheet.of(Waters.rock().depths());
    Polyline out =
        Polyline.of(new Position(900, 900), new Position(900, 2500), new Position(1100, 900));
    List<List<Vec>> parts = sheet.inside(sheet.at(out));
    assertThat(parts).hasSize(2);
    assertThat(parts).allSatisfy(part -> assertThat(part).allMatch(sheet.area()::contains));
    assertThat(sheet.inside(sheet.at(BEYOND.reversed()))).hasSize(1);
    assertThat(sheet.inside(List.of(new Vec(-9, -9), new Vec(-9, 500)))).isEmpty();
  }

  /** Contours as drawn stay within a unit and a half of the water of their depth. */
  @Test
  void drawsContoursWhereTheDepthIsTheirs() {
    for (Waterway water : List.of(Waters.river(), Waters.shoal())) {
      ChartSheet sheet = ChartSheet.of(water.depths());
      for (double level : new double[] {-2.5, 0, 2, 5}) {
        for (Vec at : ChartParts.contour(sheet, level)) {
          if (sheet.area().grown(-3).contains(at)) {
            assertThat(nearest(sheet, at, level)).as("%s m at %s", level, at).isLessThan(1.5);
          }
        }
      }
    }
  }

  /** How far from a place of the picture the depth passes a level. */
  private static double nearest(ChartSheet sheet, Vec at, double level) {
    boolean shallow = sheet.depth(at) < level;
    for (double away = 0.1; away < 3; away += 0.1) {
      for (int turn = 0; turn < 16; turn++) {
        Vec off = Vec.along(Bearing.of(turn * 22.5), away);
        if (sheet.depth(at.plus(off)) < level != shallow) {
          return away;
        }
      }
    }
    return 3;
  }

  @Test
  void escapesWhatMarksBear() {
    Waterway rock = Waters.rock();
    PlacedMark mark = Waters.mark(MarkKind.SPECIAL, 0, new Position(500, 1500), null, "<&\"");
    Waterway water = new Waterway(rock.depths(), 0, rock.fairways(), rock.dangers(), List.of(mark));
    Svg chart = drawn(water, ChartOptions.plain());
    assertThat(chart.text()).contains("&lt;&amp;&quot;");
    assertThat(Pictures.elements(chart)).isNotEmpty();
  }

  @Test
  void writesLightCharactersAndColoursBesideMarksUnlessToldNotTo() {
    assertThat(drawn(Waters.shoal(), ChartOptions.plain()).text())
        .contains(">Q(9) W 15s<", ">YBY<", ">BYB<", ">Q(3) W 10s<");
    assertThat(drawn(Waters.shoal(), ChartOptions.plain().withoutLabels()).text())
        .doesNotContain("YBY", "Q(9)");
  }

  @Test
  void writesTheBearingOfALeadingLineFromSeaward() {
    assertThat(drawn(Waters.river(), ChartOptions.plain()).text()).contains(">002\u00b0<");
  }

  @Test
  void marksWhereAKeelTouchedWithTheWaterThere() {
    ChartOptions touched = ChartOptions.plain().touching(new Position(990, 990), 1.29);
    assertThat(drawn(Waters.shoal(), touched).text()).contains(">1.2\u00a0m<");
  }

  /** Boats do not move what stands on the chart. */
  @Test
  void keepsSoundingsInTheirPlacesWhateverSailsThere() {
    Waterway river = Waters.river();
    assertThat(ChartParts.figures(drawn(river, ChartSheets.sailed(river))))
        .containsAll(ChartParts.figures(drawn(river, ChartOptions.plain())));
  }

  @Test
  void showsEveryLightAtItsRhythmInTheDarkSoSmallThatAllMayFlash() {
    Waterway river = Waters.river();
    Svg night = drawn(river, ChartOptions.plain().atNight());
    long lights =
        Pictures.elements(night).stream().filter(e -> e.getTagName().equals("animate")).count();
    assertThat(lights).isEqualTo(river.marks().size());
    double widest =
        Pictures.elements(night).stream()
            .filter(each -> each.hasAttribute("vector-effect"))
            .mapToDouble(each -> Double.parseDouble(each.getAttribute("stroke-width")))
            .max()
            .orElseThrow();
    double lit = lights * StrictMath.PI * widest * widest / 4;
    assertThat(lit).isLessThanOrEqualTo(FlashSafety.litArea() * 1.001);
    assertThat(widest / 2).isCloseTo(ChartLights.radius((int) lights), within(0.01));
  }

  private static Svg drawn(Waterway water, ChartOptions options) {
    return ChartDrawing.of(water, Lettering.ENGLISH, options);
  }

  private static int compressed(String text) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return bytes.size();
  }
}
