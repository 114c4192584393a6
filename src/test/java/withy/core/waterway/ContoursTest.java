package withy.core.waterway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import withy.core.geometry.Position;
import withy.fixture.Waters;

class ContoursTest {
  private static final Position MIDDLE = new Position(200, 200);

  /** A cone of a shoal: a metre at its top, a metre deeper every 20 m. */
  private static final DepthField CONE =
      Waters.field(10, 41, 41, place -> 1 + place.distanceTo(MIDDLE) / 20);

  @Test
  void drawsOneRingRoundACone() {
    List<List<Position>> rings = Contours.shallowerThan(CONE, 6);

    assertThat(rings).hasSize(1);
    assertThat(rings.get(0))
        .allSatisfy(each -> assertThat(each.distanceTo(MIDDLE)).isCloseTo(100, within(2.0)));
  }

  @Test
  void keepsTheShallowOnTheRightHand() {
    List<Position> ring = Contours.shallowerThan(CONE, 6).get(0);
    assertThat(area(ring)).isCloseTo(-StrictMath.PI * 100 * 100, within(600.0));
  }

  @Test
  void drawsASecondRingRoundAPoolWithTheShallowOutsideIt() {
    DepthField pool =
        Waters.field(10, 41, 41, place -> StrictMath.abs(place.distanceTo(MIDDLE) - 90) / 10);
    List<List<Position>> rings = Contours.shallowerThan(pool, 5);

    assertThat(rings).hasSize(2);
    assertThat(rings.stream().mapToDouble(ContoursTest::area).sorted())
        .satisfiesExactly(
            outer -> assertThat(outer).isNegative(), inner -> assertThat(inner).isPositive());
  }

  @Test
  void followsTheRimWhereAllIsShallow() {
    List<Position> ring = Contours.shallowerThan(CONE, 99).get(0);
    assertThat(area(ring)).isEqualTo(-400.0 * 400);
  }

  @Test
  void drawsNothingWhereAllIsDeep() {
    assertThat(Contours.shallowerThan(CONE, 0.5)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-2.5, 0, 2, 5, 10})
  void crossesTheDepthOfItsLevelOrFollowsTheRim(double level) {
    for (Waterway water : List.of(Waters.river(), Waters.shoal(), Waters.rock())) {
      for (List<Position> ring : Contours.shallowerThan(water.depths(), level)) {
        for (Position each : ring) {
          double depth = water.depths().depth(each);
          assertThat(isOnRim(water.depths(), each) && depth < level ? level : depth)
              .isCloseTo(level, within(1e-9));
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-2.5, 0, 2, 5, 10})
  void partsTheShallowCentresFromTheDeepOnes(double level) {
    for (Waterway water : List.of(Waters.river(), Waters.shoal(), Waters.rock())) {
      DepthField field = water.depths();
      List<List<Position>> rings = Contours.shallowerThan(field, level);
      for (int row = 1; row < field.rows() - 1; row += 3) {
        for (int column = 1; column < field.columns() - 1; column += 3) {
          Position centre = new Position(column * field.cell(), row * field.cell());
          long crossed = rings.stream().filter(ring -> isInside(ring, centre)).count();
          double depth = field.depth(column, row);
          if (depth != level) {
            assertThat(crossed % 2 == 1).as("%s m at %s", depth, centre).isEqualTo(depth < level);
          }
        }
      }
    }
  }

  @Test
  void joinsTheShallowCornersOfASaddleWhoseMiddleIsShallow() {
    DepthField saddle = new DepthField(new Position(0, 0), 10, 2, new double[] {0, 3, 3, 0});
    assertThat(saddle.depth(new Position(5, 5))).isLessThan(2);
    assertThat(Contours.shallowerThan(saddle, 2)).hasSize(1);
  }

  @Test
  void partsTheShallowCornersOfASaddleWhoseMiddleIsDeep() {
    DepthField saddle = new DepthField(new Position(0, 0), 10, 2, new double[] {1, 5, 5, 1});
    assertThat(Contours.shallowerThan(saddle, 2)).hasSize(2);
  }

  /** The saddle point, unlike the mean of the corners, tells how the surface hangs together. */
  @Test
  void decidesBySaddlePointNotByMean() {
    DepthField saddle = new DepthField(new Position(0, 0), 10, 2, new double[] {1.9, 9, 2.2, 0});
    double meanOfCorners = (1.9 + 9 + 2.2 + 0) / 4;
    assertThat(meanOfCorners).isGreaterThan(2.05);
    assertThat(Contours.shallowerThan(saddle, 2.05)).hasSize(2);
    assertThat(Contours.shallowerThan(saddle, 2.15)).hasSize(1);
  }

  private static boolean isOnRim(DepthField field, Position at) {
    return at.x() == 0 || at.y() == 0 || at.x() == field.width() || at.y() == field.height();
  }

  /** Positive where the ring runs counter-clockwise. */
  private static double area(List<Position> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      Position next = ring.get((i + 1) % ring.size());
      twice += ring.get(i).x() * next.y() - next.x() * ring.get(i).y();
    }
    return twice / 2;
  }

  private static boolean isInside(List<Position> ring, Position at) {
    boolean inside = false;
    for (int i = 0; i < ring.size(); i++) {
      Position a = ring.get(i);
      Position b = ring.get((i + 1) % ring.size());
      double up = (at.y() - a.y()) / (b.y() - a.y());
      if (a.y() > at.y() != b.y() > at.y() && at.x() < a.x() + up * (b.x() - a.x())) {
        inside = !inside;
      }
    }
    return inside;
  }
}
