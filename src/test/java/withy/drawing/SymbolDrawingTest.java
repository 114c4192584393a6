package withy.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;
import withy.core.mark.Retroreflector;
import withy.core.mark.Symbol;

class SymbolDrawingTest {
  /** 33 CFR 62.33: one band near the top, one just above the waterline. */
  @Test
  void putsTwoOrangeBandsRoundTheBodyOfAnOrangeSymbol() {
    for (Appearance each : bearing(true)) {
      SvgWriter svg = SvgWriter.scaled(1, 1);
      Surface surface = new Surface(BodyForm.of(each).profile());
      new Emblem(each, surface).bands(svg);
      List<Element> bands = paths(svg.finish());
      assertThat(bands).hasSize(2);
      assertThat(bands).allMatch(b -> b.getAttribute("fill").equals(Palette.ORANGE.toString()));
      double top = surface.profile().top();
      assertThat(middle(bands.get(0))).isBetween(top, top * 0.78);
      assertThat(middle(bands.get(1))).isBetween(top * 0.24, -2.5);
    }
  }

  @Test
  void keepsASymbolInsideTheBodyThatBearsIt() {
    for (Appearance each : bearing(false)) {
      SvgWriter svg = SvgWriter.scaled(1, 1);
      Surface surface = new Surface(BodyForm.of(each).profile());
      new Emblem(each, surface).draw(svg, false);
      for (Element path : paths(svg.finish())) {
        for (Vec at : Extent.points(path)) {
          assertThat(at.y()).isBetween(surface.profile().top(), 0.0);
          assertThat(Math.abs(at.x())).isLessThan(surface.profile().halfWidth(at.y()));
        }
      }
    }
  }

  /** At the width of a phone a symbol of the regulations is at least 20 CSS pixels across. */
  @Test
  void drawsOrangeSymbolsLarge() {
    for (Appearance each : bearing(true)) {
      SvgWriter svg = SvgWriter.scaled(1, 1);
      new Emblem(each, new Surface(BodyForm.of(each).profile())).draw(svg, false);
      Rectangle2D box = Extent.box(Extent.points(paths(svg.finish()).get(0)));
      double size = Math.max(box.getHeight(), box.getWidth());
      assertThat(size * MarkDrawing.scale(each)).isGreaterThan(20);
    }
  }

  /** The faces of diamond, circle and square stay open: no fill lies on the white. */
  @Test
  void leavesTheFaceOfASymbolOpen() {
    for (Symbol symbol : List.of(Symbol.DIAMOND, Symbol.CIRCLE, Symbol.SQUARE)) {
      SvgWriter svg = SvgWriter.scaled(1, 1);
      SymbolDrawing.draw(svg, symbol, new Vec(0, 0), 30, 30);
      assertThat(paths(svg.finish())).allMatch(each -> each.getAttribute("fill").equals("none"));
    }
  }

  @Test
  void crossesOnlyTheDiamondThatShutsVesselsOut() {
    assertThat(strokes(Symbol.DIAMOND_CROSS)).isEqualTo(strokes(Symbol.DIAMOND) + 2);
  }

  private static int strokes(Symbol symbol) {
    SvgWriter svg = SvgWriter.scaled(1, 1);
    SymbolDrawing.draw(svg, symbol, new Vec(0, 0), 30, 30);
    return paths(svg.finish()).size();
  }

  /** TP 968: a red flag with a white stripe. */
  @Test
  void fliesTheDiversFlagAboveTheBody() {
    for (Appearance each : Specimens.symbols().values()) {
      if (each.symbol() == Symbol.DIVER_FLAG) {
        Figure figure = Figure.of(each);
        assertThat(figure.highest()).isLessThan(figure.top() - 40);
        assertThat(MarkDrawing.near(each, null).text())
            .contains(Palette.RED.toString(), Palette.WHITE.toString());
      }
    }
  }

  /** 33 CFR 62.32: white stripes twice as wide as black ones. */
  @Test
  void makesWhiteTwiceAsWideAsBlackOnAnObstructionMark() {
    for (BodyShape body : List.of(BodyShape.CAN, BodyShape.PILLAR, BodyShape.SPAR)) {
      Coat coat =
          Coat.of(
              new Appearance(
                  body, ColourPattern.VERTICAL, List.of(Colour.WHITE, Colour.BLACK), null, null));
      assertThat(width(coat, 0)).isCloseTo(2 * width(coat, 1), within(1e-9));
      assertThat(coat.colours()).startsWith(Colour.WHITE).endsWith(Colour.WHITE);
    }
  }

  @Test
  void makesOrangeTheTopThirdOfAMooringBuoyAndGivesItARing() {
    Appearance buoy = Objects.requireNonNull(Specimens.symbols().get("mooring canada"));
    Coat coat = Coat.of(buoy);
    assertThat(width(coat, 0)).isCloseTo(1.0 / 3, within(1e-9));
    assertThat(Figure.of(buoy).highest()).isLessThan(Figure.of(buoy).top() - 10);
  }

  @Test
  void addsSheetingOnlyWhereItIsAskedFor() {
    Appearance can =
        new Appearance(BodyShape.CAN, ColourPattern.PLAIN, List.of(Colour.RED), null, null);
    int plain = paths(MarkDrawing.near(can, null)).size();
    for (Retroreflector.Shape shape : Retroreflector.Shape.values()) {
      List<Retroreflector> two =
          List.of(new Retroreflector(shape, Colour.BLUE), new Retroreflector(shape, Colour.RED));
      Svg svg = MarkDrawing.near(can, null, two);
      assertThat(paths(svg)).hasSize(plain + 4);
      assertThat(svg.text().indexOf(Palette.BLUE.toString())).isPositive();
    }
  }

  private static double width(Coat coat, int stripe) {
    return coat.share(stripe + 1) - coat.share(stripe);
  }

  private static List<Appearance> bearing(boolean orange) {
    Map<String, Appearance> all = Specimens.symbols();
    return all.values().stream()
        .filter(each -> each.symbol() != null && each.symbol() != Symbol.DIVER_FLAG)
        .filter(each -> !orange || each.symbol().isOrange())
        .toList();
  }

  private static double middle(Element path) {
    return Extent.box(Extent.points(path)).getCenterY();
  }

  private static List<Element> paths(Svg svg) {
    return Pictures.elements(svg).stream()
        .filter(each -> each.getTagName().equals("path"))
        .toList();
  }
}
