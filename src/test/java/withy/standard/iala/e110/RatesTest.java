package withy.standard.iala.e110;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import withy.core.light.LightCharacter;
import withy.core.light.LightNotationException;
import withy.core.light.LightNotationException.Reason;
import withy.core.light.Rhythm;

/** IALA E-110 (1998), rates of flashes a minute; the bounds of CHS Chart 1 P 10 agree. */
class RatesTest {

  @ParameterizedTest
  @CsvSource({
    "Fl, 1.21",
    "Q, 1.2",
    "Q, 0.76",
    "VQ, 0.75",
    "VQ, 0.4",
    "UQ, 0.375",
    "UQ, 0.25",
    "UQ, 0.2",
    "Fl(2), 2.41",
    "Q(9), 9"
  })
  void takesRatesOfTheClassUpToItsBounds(String rhythm, String period) {
    LightCharacter light = LightCharacter.parse(rhythm + " W " + period + "s");
    assertThat(Rhythm.classify(light.timeline())).contains(light.rhythm());
  }

  @ParameterizedTest
  @CsvSource({
    "Fl, 1.2, 50",
    "Q, 1.201, 49.958",
    "Q, 0.75, 80",
    "VQ, 0.751, 79.893",
    "VQ, 0.375, 160",
    "UQ, 0.376, 159.574",
    "UQ, 0.199, 301.507",
    "Fl(2), 2.4, 50",
    "Fl(2+1), 3.6, 50"
  })
  void refusesRatesOutsideTheClass(String rhythm, String period, String rate) {
    assertThatExceptionOfType(LightNotationException.class)
        .isThrownBy(() -> LightCharacter.parse(rhythm + " W " + period + "s"))
        .satisfies(fault -> assertThat(fault.reason()).isEqualTo(Reason.RATE))
        .satisfies(fault -> assertThat(fault.arguments()).startsWith(rhythm).endsWith(rate));
  }

  @ParameterizedTest
  @CsvSource({
    "Q(3) W 10s, 00.3+(01.2)+00.3+(01.2)+00.3+(06.7)",
    "VQ(3) W 10s, 00.3+(00.7)+00.3+(00.7)+00.3+(07.7)",
    "IQ W 10s, 00.2+(00.3)+00.2+(00.3)+00.2+(08.8)"
  })
  void refusesStatedFlashesOfAnotherRate(String character, String sequence) {
    assertThatExceptionOfType(LightNotationException.class)
        .isThrownBy(() -> LightCharacter.parse(character + " " + sequence))
        .satisfies(fault -> assertThat(fault.reason()).isEqualTo(Reason.RATE));
  }
}
