package withy.standard.geodesy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import withy.core.geometry.Geodetic;
import withy.core.geometry.LocalPlane;
import withy.core.geometry.Position;

/** Degrees are as long as the published series for WGS 84 says. */
class LengthOfADegreeTest {
  @ParameterizedTest
  @CsvFileSource(resources = "length-of-a-degree.csv", useHeadersInDisplayName = true)
  void isThatOfTheEllipsoid(double latitude, double north, double east, String source) {
    LocalPlane plane = LocalPlane.at(new Geodetic(latitude, 10));
    assertThat(plane.metresPerLatitude()).as(source).isCloseTo(north, within(1.0));
    assertThat(plane.metresPerLongitude()).as(source).isCloseTo(east, within(1.0));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "length-of-a-degree.csv", useHeadersInDisplayName = true)
  void placesComeBackFromThePlane(double latitude, double north, double east, String source) {
    LocalPlane plane = LocalPlane.at(new Geodetic(latitude, 10));
    Position there = plane.position(new Geodetic(latitude + 0.01, 10.02));
    assertThat(there.y()).as(source).isCloseTo(north / 100, within(0.02));
    assertThat(there.x()).isCloseTo(east / 50, within(0.02));
    Geodetic back = plane.place(there);
    assertThat(back.latitude()).isCloseTo(latitude + 0.01, within(1e-11));
    assertThat(back.longitude()).isCloseTo(10.02, within(1e-11));
  }
}
