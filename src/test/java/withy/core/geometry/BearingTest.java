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
import org.junit.jupiter.params.provider.ValueSource;

class BearingTest {
  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 360, 720, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesWhatIsNoBearing(double degrees) {
    assertThatIllegalArgumentException().isThrownBy(() -> new Bearing(degrees));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "360, 0", "-90, 270", "725, 5", "-1e-14, 0", "-360, 0"})
  void turnsAnyAngleIntoTheCircle(double angle, double degrees) {
    assertThat(Bearing.of(angle)).isEqualTo(new Bearing(degrees));
  }

  @ParameterizedTest
  @CsvSource({
    "10, 350, -20",
    "350, 10, 20",
    "0, 180, 180",
    "180, 0, 180",
    "45, 45, 0",
    "0, 181, -179"
  })
  void seesPortAsNegativeOverTheBow(double heading, double bearing, double relative) {
    assertThat(new Bearing(bearing).relativeTo(new Bearing(heading))).isEqualTo(relative);
  }

  @Test
  void measuresTheSmallerAngle() {
    assertThat(new Bearing(350).angleTo(new Bearing(10))).isEqualTo(20);
    assertThat(new Bearing(10).angleTo(new Bearing(350))).isEqualTo(20);
    assertThat(new Bearing(350).clockwiseTo(new Bearing(10))).isEqualTo(20);
    assertThat(new Bearing(10).clockwiseTo(new Bearing(350))).isEqualTo(340);
  }

  @Property(tries = 300)
  void staysInTheCircle(@ForAll @DoubleRange(min = -1e6, max = 1e6) double angle) {
    assertThat(Bearing.of(angle).degrees()).isBetween(0.0, Math.nextDown(360.0));
  }

  @Property(tries = 300)
  void comesBackFromItsReciprocal(
      @ForAll @DoubleRange(min = 0, max = 360, maxIncluded = false) double degrees) {
    Bearing bearing = new Bearing(degrees);
    assertThat(bearing.reciprocal().reciprocal().angleTo(bearing)).isCloseTo(0, within(1e-9));
    assertThat(bearing.angleTo(bearing.reciprocal())).isCloseTo(180, within(1e-9));
  }

  @Property(tries = 300)
  void turnsByTheRelativeBearing(
      @ForAll @DoubleRange(min = 0, max = 360, maxIncluded = false) double heading,
      @ForAll @DoubleRange(min = 0, max = 360, maxIncluded = false) double bearing) {
    Bearing ahead = new Bearing(heading);
    double relative = new Bearing(bearing).relativeTo(ahead);
    assertThat(relative).isBetween(-180.0, 180.0);
    assertThat(ahead.plus(relative).angleTo(new Bearing(bearing))).isCloseTo(0, within(1e-9));
  }
}
