package withy.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import withy.core.mark.Appearance;
import withy.core.mark.Board;
import withy.core.mark.BoardShape;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;
import withy.core.mark.Structure;
import withy.core.mark.Taper;

class BoardDrawingTest {
  private static final Polygon SQUARE = Polygon.box(-10, -10, 10, 10);
  private static final Polygon DIAMOND = Polygon.of(0, -10, 10, 0, 0, 10, -10, 0);

  @ParameterizedTest
  @EnumSource(ColourPattern.class)
  void sharesTheWholeBoardAmongItsColours(ColourPattern pattern) {
    List<Colour> colours =
        pattern == ColourPattern.PLAIN
            ? List.of(Colour.RED)
            : List.of(Colour.RED, Colour.WHITE, Colour.RED);
    for (Polygon board : List.of(SQUARE, DIAMOND)) {
      double covered =
          ColourFields.of(board, pattern, colours, board == DIAMOND).stream()
              .mapToDouble(each -> area(each.shape()))
              .sum();
      double nested = pattern == ColourPattern.BORDER ? covered - area(board) : 0;
      assertThat(covered - nested).isCloseTo(area(board), within(1e-6));
    }
  }

  @Test
  void countsColoursFromTheTopAndFromTheLeft() {
    List<Colour> two = List.of(Colour.RED, Colour.GREEN);
    List<ColourFields.Field> bands = ColourFields.of(SQUARE, ColourPattern.HORIZONTAL, two, false);
    assertThat(bands).extracting(ColourFields.Field::colour).isEqualTo(two);
    assertThat(bands.get(0).shape().bottom()).isCloseTo(0, within(1e-9));
    List<ColourFields.Field> stripes = ColourFields.of(SQUARE, ColourPattern.VERTICAL, two, false);
    assertThat(stripes.get(0).shape().middle().x()).isLessThan(0);
  }

  /** Light list key: the coloured sectors at the side corners, the white above and below. */
  @Test
  void quartersADiamondWithItsFirstColourAtTheSides() {
    List<ColourFields.Field> quarters =
        ColourFields.of(DIAMOND, ColourPattern.SQUARED, List.of(Colour.GREEN, Colour.WHITE), true);
    assertThat(quarters).hasSize(4);
    for (ColourFields.Field each : quarters) {
      Vec middle = each.shape().middle();
      boolean atTheSide = Math.abs(middle.x()) > Math.abs(middle.y());
      assertThat(each.colour() == Colour.GREEN).isEqualTo(atTheSide);
    }
  }

  @Test
  void givesEveryShapeOfBoardASilhouetteOfItsOwn() {
    Set<String> shapes = new LinkedHashSet<>();
    for (BoardShape each : BoardShape.values()) {
      Board board = Board.of(each, Colour.RED);
      shapes.add(
          MarkDrawing.distant(Specimens.board(board, ColourPattern.PLAIN, Colour.RED)).text());
    }
    shapes.add(MarkDrawing.distant(Specimens.leading(Taper.UP)).text());
    shapes.add(MarkDrawing.distant(Specimens.leading(Taper.DOWN)).text());
    assertThat(shapes).hasSize(BoardShape.values().length + 2);
  }

  /** TP 968: the front board is the lower half of an hourglass, the rear board the upper. */
  @Test
  void narrowsTheTwoBoardsOfALineTowardsEachOther() {
    Polygon front = outline(Specimens.leading(Taper.UP));
    Polygon rear = outline(Specimens.leading(Taper.DOWN));
    assertThat(front.widthAt(front.top() + 1))
        .isLessThan(front.widthAt(front.bottom() - 1) / 2 + 3);
    assertThat(rear.widthAt(rear.bottom() - 1))
        .isCloseTo(front.widthAt(front.top() + 1), within(0.5));
  }

  @Test
  void showsAPanelOnItsGroundInsideItsBorder() {
    Appearance canadian = Objects.requireNonNull(Specimens.boards().get("canada port-hand"));
    String near = MarkDrawing.near(canadian, null).text();
    int border = near.indexOf("fill=\"" + Palette.GREEN + '"');
    int ground = near.indexOf("fill=\"" + Palette.WHITE + '"', border);
    assertThat(near.indexOf("fill=\"" + Palette.GREEN + '"', ground)).isGreaterThan(ground);
  }

  @ParameterizedTest
  @EnumSource(Structure.class)
  void standsEveryFixedMarkOnSomething(Structure structure) {
    for (Appearance each : Specimens.structures().values()) {
      if (each.structure() == structure) {
        assertThat(Figure.of(each).footing()).isNotIn(Footing.WATER, Footing.LAND);
      }
    }
  }

  @Test
  void tellsABroomUpFromABroomDownByItsShape() {
    Appearance up = Objects.requireNonNull(Specimens.structures().get("broom-up red"));
    Appearance down = Objects.requireNonNull(Specimens.structures().get("broom-down red"));
    assertThat(MarkDrawing.distant(up)).isNotEqualTo(MarkDrawing.distant(down));
  }

  private static Polygon outline(Appearance leading) {
    return new BoardDrawing(leading, 0).outline();
  }

  private static double area(Polygon shape) {
    double twice = 0;
    List<Vec> corners = shape.corners();
    for (int i = 0; i < corners.size(); i++) {
      Vec here = corners.get(i);
      Vec next = corners.get((i + 1) % corners.size());
      twice += here.x() * next.y() - next.x() * here.y();
    }
    return Math.abs(twice) / 2;
  }
}
