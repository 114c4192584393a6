package withy.core.waterway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;

class WaterwayTest {
  private static final Keel KEEL = new Keel(1.4, 0.5);

  /** Six columns and three rows of 10 m, getting a metre deeper with each column eastwards. */
  private static final DepthField SLOPE =
      new DepthField(
          new Position(0, 0),
          10,
          6,
          new double[] {0, 1, 2, 3, 4, 5, 0, 1, 2, 3, 4, 5, 0, 1, 2, 3, 4, 5});

  private static Waterway water(double tide) {
    return new Waterway(SLOPE, tide, List.of(), List.of(), List.of());
  }

  @Property
  void isAPlaneWhereTheFieldIsOne(
      @ForAll @DoubleRange(min = 0, max = 50) double x,
      @ForAll @DoubleRange(min = 0, max = 20) double y) {
    assertThat(SLOPE.depth(new Position(x, y))).isEqualTo(x / 10, within(1e-9));
  }

  @Test
  void keepsWholeDecimetresAndTheDepthOfTheRimBeyondIt() {
    DepthField field = new DepthField(new Position(0, 0), 10, 2, new double[] {1.234, 2, -0.06, 2});
    assertThat(field.depth(0, 0)).isEqualTo(1.2);
    assertThat(field.depth(0, 1)).isEqualTo(-0.1);
    assertThat(SLOPE.depth(new Position(-40, 10))).isZero();
    assertThat(SLOPE.depth(new Position(90, 10))).isEqualTo(5);
    assertThat(SLOPE.contains(new Position(-1, 10))).isFalse();
  }

  @Test
  void tellsTheLeastWaterOfATrackAndWhereTheKeelTouches() {
    Polyline westwards = Polyline.of(new Position(50, 10), new Position(0, 10));
    Sailed sailed = water(0.5).sail(westwards, KEEL);
    assertThat(sailed.leastDepth()).isEqualTo(0.5);
    assertThat(sailed.where()).isEqualTo(new Position(0, 10));
    assertThat(sailed.ground().orElseThrow().x()).isBetween(5.0, 9.0);
    Polyline along = Polyline.of(new Position(40, 0), new Position(40, 20));
    assertThat(water(0).sail(along, KEEL).ground()).isEmpty();
    assertThat(water(0).sail(along, KEEL).leastDepth()).isEqualTo(4);
  }

  @Test
  void tellsSafeWaterFromWaterWithoutMarginAndFromTooLittle() {
    assertThat(KEEL.isSafe(1.9)).isTrue();
    assertThat(KEEL.isSafe(1.89)).isFalse();
    assertThat(KEEL.grounds(1.4)).isFalse();
    assertThat(KEEL.grounds(1.39)).isTrue();
  }

  @Test
  void refusesFieldsAndWatersThatContradictThemselves() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new DepthField(new Position(0, 0), 10, 3, new double[7]));
    Fairway main = new Fairway("main", Polyline.of(new Position(0, 0), new Position(0, 20)), 10);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Waterway(SLOPE, 0, List.of(main, main), List.of(), List.of()))
        .withMessageContaining("main");
  }

  @Test
  void keepsItsDepthsInAPartOfTheField() {
    DepthField part = SLOPE.around(new Position(30, 10), 11);
    assertThat(part.columns()).isEqualTo(3);
    assertThat(part.rows()).isEqualTo(3);
    assertThat(part.origin()).isEqualTo(new Position(20, 0));
    assertThat(part.depth(new Position(33, 12))).isEqualTo(3.3, within(1e-9));
    assertThat(SLOPE.around(new Position(-500, -500), 5).columns()).isEqualTo(2);
  }
}
