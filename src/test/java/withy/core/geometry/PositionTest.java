package withy.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PositionTest {
  @Test
  void refusesWhatIsNoPlace() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Position(Double.NaN, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Position(0, Double.NEGATIVE_INFINITY));
  }

  @ParameterizedTest
  @CsvSource({"0, 5, 0", "5, 0, 90", "0, -5, 180", "-5, 0, 270", "5, 5, 45", "-5, 5, 315"})
  void takesNorthAsUpAndEastAsRight(double x, double y, double degrees) {
    assertThat(new Position(0, 0).bearingTo(new Position(x, y)).degrees())
        .isCloseTo(degrees, within(1e-9));
  }

  @Test
  void bearsNorthToItself() {
    assertThat(new Position(3, 4).bearingTo(new Position(3, 4))).isEqualTo(Bearing.NORTH);
  }

  @Property(tries = 300)
  void findsTheWayThatItMoved(
      @ForAll @DoubleRange(min = 0, max = 360, maxIncluded = false) double degrees,
      @ForAll @DoubleRange(min = 1, max = 5000) double metres) {
    Position start = new Position(120, -340);
    Position end = start.moved(new Bearing(degrees), metres);
    assertThat(start.distanceTo(end)).isCloseTo(metres, within(1e-6));
    assertThat(end.distanceTo(start)).isEqualTo(start.distanceTo(end));
    assertThat(start.bearingTo(end).angleTo(new Bearing(degrees))).isCloseTo(0, within(1e-6));
    assertThat(end.bearingTo(start).angleTo(new Bearing(degrees).reciprocal()))
        .isCloseTo(0, within(1e-6));
  }
}
