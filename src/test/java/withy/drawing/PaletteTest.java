package withy.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import withy.core.mark.Colour;

class PaletteTest {
  /** COLREG 1972, Annex I, section 7(a) and (c): corners of the white and the green light. */
  private static final double[][] WHITE_LIGHT = {
    {.525, .382}, {.525, .440}, {.452, .440}, {.310, .348}, {.310, .283}, {.443, .382}
  };

  private static final double[][] GREEN_LIGHT = {
    {.028, .385}, {.009, .723}, {.300, .511}, {.203, .356}
  };

  /** Ordinary surface colours as IALA R0108 has them (CIE 39.2); corners from memory. */
  private static final double[][] RED = {{.735, .265}, {.681, .239}, {.579, .341}, {.655, .345}};

  private static final double[][] YELLOW = {{.545, .454}, {.494, .426}, {.444, .476}, {.481, .518}};
  private static final double[][] GREEN = {{.313, .682}, {.313, .453}, {.209, .383}, {.013, .486}};
  private static final double[][] WHITE = {{.350, .360}, {.305, .315}, {.295, .325}, {.340, .370}};
  private static final double[][] BLACK = {{.385, .355}, {.300, .270}, {.260, .310}, {.345, .395}};

  @Test
  void paintsSurfacesInTheirRegions() {
    assertThat(inside(Palette.RED, RED)).isTrue();
    assertThat(inside(Palette.YELLOW, YELLOW)).isTrue();
    assertThat(inside(Palette.GREEN, GREEN)).isTrue();
    assertThat(inside(Palette.WHITE, WHITE)).isTrue();
    assertThat(inside(Palette.BLACK, BLACK)).isTrue();
    assertThat(inside(Palette.BLUE, GREEN)).isFalse();
    assertThat(Seen.of(Palette.RED).luminance()).isGreaterThan(.07);
    assertThat(Seen.of(Palette.YELLOW).luminance()).isGreaterThan(.45);
    assertThat(Seen.of(Palette.GREEN).luminance()).isGreaterThan(.10);
    assertThat(Seen.of(Palette.BLACK).luminance()).isLessThan(.03);
  }

  @Test
  void showsWhiteAndGreenLightsInTheRegionsOfTheCollisionRegulations() {
    assertThat(inside(Palette.WHITE_LIGHT, WHITE_LIGHT)).isTrue();
    assertThat(inside(Palette.GREEN_LIGHT, GREEN_LIGHT)).isTrue();
    assertThat(inside(Palette.RED_LIGHT, GREEN_LIGHT)).isFalse();
  }

  /**
   * The least difference is 14, between green and yellow without red cones and between red and
   * yellow without green ones: visible, but small, so the strip can name a light by its letter.
   */
  @ParameterizedTest
  @EnumSource(Seen.Eyes.class)
  void keepsTheLightsApartForEveryKindOfEyes(Seen.Eyes eyes) {
    List<Palette> lights =
        List.of(Palette.RED_LIGHT, Palette.GREEN_LIGHT, Palette.YELLOW_LIGHT, Palette.WHITE_LIGHT);
    for (Palette one : lights) {
      for (Palette other : lights) {
        double apart = eyes.see(Seen.of(one)).difference(eyes.see(Seen.of(other)));
        assertThat(one == other ? 99 : apart)
            .as("%s and %s for %s", one.name(), other.name(), eyes)
            .isGreaterThanOrEqualTo(eyes == Seen.Eyes.NORMAL ? 27 : 14);
      }
    }
  }

  /** Shape and topmark say the same as the colour, so less is borne than between lights. */
  @ParameterizedTest
  @EnumSource(Seen.Eyes.class)
  void keepsRedFromGreenOnBodiesForEveryKindOfEyes(Seen.Eyes eyes) {
    Seen red = eyes.see(Seen.of(Palette.RED));
    assertThat(red.difference(eyes.see(Seen.of(Palette.GREEN)))).isGreaterThan(11);
  }

  /** Symbols and bands are told from what they are painted on; the yellow ones have an edge. */
  @ParameterizedTest
  @EnumSource(Seen.Eyes.class)
  void keepsSymbolsApartFromTheirGroundForEveryKindOfEyes(Seen.Eyes eyes) {
    Palette[][] pairs = {
      {Palette.ORANGE, Palette.WHITE},
      {Palette.YELLOW, Palette.RED},
      {Palette.YELLOW, Palette.GREEN},
      {Palette.BLUE, Palette.YELLOW},
      {Palette.BLUE, Palette.WHITE},
      {Palette.BLACK, Palette.YELLOW}
    };
    for (Palette[] each : pairs) {
      double apart = eyes.see(Seen.of(each[0])).difference(eyes.see(Seen.of(each[1])));
      assertThat(apart).as("%s on %s", each[0].name(), each[1].name()).isGreaterThan(18);
    }
  }

  /** An outline holds where it contrasts with the ground behind the mark. */
  @Test
  void outlinesHoldOnSeaSkyPaperAndChart() {
    for (Palette ground :
        List.of(
            Palette.SKY,
            Palette.SEA,
            Palette.FAR_SEA,
            Palette.FAR_LAND,
            Palette.PAPER,
            Palette.CHART_WATER,
            Palette.CHART_DEEP,
            Palette.CHART_SHELVING,
            Palette.CHART_SHALLOW,
            Palette.CHART_DRYING,
            Palette.LAND)) {
      assertThat(contrast(Palette.INK, ground)).as(ground.name()).isGreaterThan(7);
      assertThat(contrast(Palette.SILHOUETTE, ground)).as(ground.name()).isGreaterThan(4.5);
    }
    assertThat(contrast(Palette.NIGHT_INK, Palette.NIGHT)).isGreaterThan(7);
  }

  /** Tints are quiet: none could be taken for the colour of a mark, and soundings read on all. */
  @Test
  void tintsOfChartsLeaveTheColoursToTheMarks() {
    for (Palette tint : ChartInk.DAY.depths()) {
      for (Palette mark : List.of(Palette.RED, Palette.GREEN, Palette.YELLOW, Palette.BLUE)) {
        double apart = Seen.of(tint).difference(Seen.of(mark));
        assertThat(apart).as("%s and %s", tint.name(), mark.name()).isGreaterThan(20);
      }
      assertThat(contrast(ChartInk.DAY.faint(), tint)).as(tint.name()).isGreaterThan(4.5);
    }
    for (Palette tint : ChartInk.NIGHT.depths()) {
      assertThat(contrast(ChartInk.NIGHT.faint(), tint)).as(tint.name()).isGreaterThan(4);
    }
  }

  @ParameterizedTest
  @EnumSource(Colour.class)
  void lettersReadOnEveryBody(Colour colour) {
    assertThat(contrast(Palette.lettering(colour), Palette.of(colour))).isGreaterThan(3);
  }

  /**
   * Pairs of Sharma, Wu, Dalal 2005, table 1 (numbers 1, 4, 7, 17 and 25), values from memory of
   * that table.
   */
  @ParameterizedTest
  @CsvSource({
    "50, 2.6772, -79.7751, 50, 0, -82.7485, 2.0425",
    "50, -1.3802, -84.2814, 50, 0, -82.7485, 1.0000",
    "50, 0, 0, 50, -1, 2, 2.3669",
    "50, 2.5, 0, 73, 25, -18, 27.1492",
    "60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644"
  })
  void measuresDifferencesAsThePublishedPairs(
      double l1, double a1, double b1, double l2, double a2, double b2, double expected) {
    double[] one = {l1, a1, b1};
    double[] two = {l2, a2, b2};
    assertThat(Seen.difference(one, two)).isCloseTo(expected, within(1e-4));
  }

  private static double contrast(Palette one, Palette other) {
    return Seen.of(one).contrast(Seen.of(other));
  }

  private static boolean inside(Palette colour, double[][] corners) {
    double x = Seen.of(colour).x();
    double y = Seen.of(colour).y();
    boolean inside = false;
    for (int i = 0, j = corners.length - 1; i < corners.length; j = i++) {
      double[] a = corners[i];
      double[] b = corners[j];
      if ((a[1] > y) != (b[1] > y) && x < (b[0] - a[0]) * (y - a[1]) / (b[1] - a[1]) + a[0]) {
        inside = !inside;
      }
    }
    return inside;
  }
}
