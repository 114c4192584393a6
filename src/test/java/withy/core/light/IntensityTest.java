package withy.core.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class IntensityTest {
  private static final int TRIES = 300;

  @Property(tries = TRIES)
  void inTheVisibilityItIsStatedForTheNominalRangeIsTheLuminousOne(
      @ForAll @DoubleRange(min = 0.1, max = 40) double nominal) {
    Intensity light = Intensity.ofNominalRange(nominal);
    assertThat(light.luminousRange(10)).isCloseTo(nominal, within(1e-9));
    assertThat(light.nominalRange()).isCloseTo(nominal, within(1e-9));
  }

  @Property(tries = TRIES)
  void theRangeInAVisibilityGivesTheIntensityBack(
      @ForAll @DoubleRange(min = 0.5, max = 1e6) double candela,
      @ForAll @DoubleRange(min = 0.1, max = 50) double visibility) {
    double range = new Intensity(candela).luminousRange(visibility);
    assertThat(Intensity.justSeen(range, visibility).candela())
        .isCloseTo(candela, within(candela * 1e-9));
  }

  @Property(tries = TRIES)
  void carriesFartherInClearerAir(
      @ForAll @DoubleRange(min = 1, max = 30) double nominal,
      @ForAll @DoubleRange(min = 0.2, max = 40) double visibility) {
    Intensity light = Intensity.ofNominalRange(nominal);
    assertThat(light.luminousRange(visibility * 1.05))
        .isGreaterThan(light.luminousRange(visibility));
  }

  @Property(tries = TRIES)
  void aBrighterLightCarriesFarther(
      @ForAll @DoubleRange(min = 1, max = 1e6) double candela,
      @ForAll @DoubleRange(min = 0.2, max = 40) double visibility) {
    assertThat(new Intensity(candela * 1.05).luminousRange(visibility))
        .isGreaterThan(new Intensity(candela).luminousRange(visibility));
  }

  @Example
  void refusesWhatIsNotAboveZero() {
    assertThatThrownBy(() -> new Intensity(0)).hasMessage("an intensity is above 0: 0.0");
    assertThatThrownBy(() -> Intensity.justSeen(-1, 10)).hasMessage("a distance is above 0: -1.0");
    assertThatThrownBy(() -> new Intensity(5).luminousRange(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
