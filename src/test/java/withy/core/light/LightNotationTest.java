package withy.core.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LightNotationTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Fl(3)WRG.15s21m15-11M | Fl(3) WRG 15s 21m 15-11M",
        "FL(3)WRG.15S21M15-11M | Fl(3) WRG 15s 21m 15-11M",
        "Fl.(2)W. period 6s; fl. 1.0s, ec. 1.0s; fl. 1.0s, ec. 3.0s | Fl(2) W 6s 1+(1)+1+(3)",
        "Oc(2)W.13s [1;1;1;10] | Oc(2) W 13s (1)+1+(1)+10",
        "Q(6)+LFl W 15s | Q(6)+LFl W 15s",
        "q(6) + l.fl.(1) 15 s | Q(6)+LFl W 15s",
        "Qk Fl(6)+L Fl W 15s | Q(6)+LFl W 15s",
        "Gp Fl(3) R 10s | Fl(3) R 10s",
        "Gp. Fl. (3) R. 10 sec. | Fl(3) R 10s",
        "Qk Fl G | Q G",
        "Qk.Fl.G. | Q G",
        "Int Qk Fl | IQ W",
        "V Qk Fl(9) 10s | VQ(9) W 10s",
        "Occ R 4s | Oc R 4s",
        "Gp Occ(2) 8s | Oc(2) W 8s",
        "E Int 6s | Iso W 6s",
        "Alt WR 10s | Al WR 10s",
        "Alt Fl WR 10s | Al.Fl WR 10s",
        "Alt Occ BuY 3s | Al.Oc BuY 3s",
        "Al.Oc.BuY.3s | Al.Oc BuY 3s",
        "F Fl W 10s | FFl W 10s",
        "FFl(2)R 10s | FFl(2) R 10s",
        "F R | F R",
        "FR | F R",
        "f | F W",
        "Mo(A)W8s | Mo(A) W 8s",
        "mo(ab) 20s | Mo(AB) W 20s",
        "Fl R 2,5s 4,8m 9,5M | Fl R 2.5s 4.8m 9.5M",
        "Fl R 2\u00b75s | Fl R 2.5s",
        "Fl .R. 4s 60ft | Fl R 4s 60ft",
        "Fl R 4s 60 feet 5 nm | Fl R 4s 60ft 5M",
        "Fl WR 4s 15,11M | Fl WR 4s 15-11M",
        "Fl WR 4s 15/11M | Fl WR 4s 15-11M",
        "Fl WRG 4s 19,16,15M | Fl WRG 4s 19/16/15M",
        "Fl W.R.G. 4s W19 R16 G15 | Fl WRG 4s W19 R16 G15",
        "F W R21m 5M | F WR 21m 5M",
        "Fl 4s R | Fl R 4s",
        "Fl Or 4s 5M | Fl Or 4s 5M",
        "Fl AmVi 4s | Fl AmVi 4s",
        "Fl R every 4 seconds | Fl R 4s",
        "Fl.(3)W. period 12s (no timings) | Fl(3) W 12s",
        "Q W [.3;.7] | Q W 1s 0.3+(0.7)",
        "Q R fl. 0.3s, ec. 0.7s | Q R 1s 0.3+(0.7)",
        "Fl W 5s fl 0.5 | Fl W 5s 0.5+(4.5)",
        "Fl W 4s fl. .4s, ec. 3.6s | Fl W 4s 0.4+(3.6)",
        "Iso W lt. 2s, ec. 2s | Iso W 4s 2+(2)",
        "Al.WG 10s 05.0+05.0 | Al WG 10s 5+5",
        "FFl W 10s fl 1.5s, ec. 8.5s | FFl W 10s 1.5+(8.5)",
        "Al.Fl.W.R. period 10s W.fl. 1s, ec. 4s, R.fl. 1s, ec. 4s | Al.Fl WR 10s 1+(4)+1+(4)",
      })
  void writesEverySpellingInOneForm(String text, String notation) {
    LightCharacter light = LightCharacter.parse(text);
    assertThat(light.notation()).isEqualTo(notation);
    assertThat(LightCharacter.parse(notation)).isEqualTo(light);
  }

  /** Letter case decides on m and M only where nothing else does. */
  @ParameterizedTest
  @CsvSource({
    "Fl W 4s 5m, 5, ",
    "Fl W 4s 5M, , 5",
    "Fl W 4s 21m 5M, 21, 5",
    "fl w 4s 21m 5m, 21, 5",
    "FL W 4S 21M 5M, 21, 5",
    "Fl W 4s 5M 21m, 21, 5",
    "Fl W 4s 21m 5nm, 21, 5"
  })
  void tellsElevationFromRange(String text, String elevation, String range) {
    LightCharacter light = LightCharacter.parse(text);
    assertThat(light.elevation().map(each -> each.value().toPlainString()).orElse(null))
        .isEqualTo(elevation);
    assertThat(
            light.rangeOf(LightColour.WHITE).map(each -> each.most().toPlainString()).orElse(null))
        .isEqualTo(range);
  }

  @Test
  void readsFeetAsMetres() {
    LightCharacter light = LightCharacter.parse("Fl W 10s 100ft");
    assertThat(light.elevation().orElseThrow().metres()).isEqualByComparingTo("30.48");
  }

  @Test
  void isMadeFromItsParts() {
    assertThat(
            LightCharacter.of(
                LightClass.COMPOSITE_GROUP_FLASHING,
                List.of(2, 1),
                LightColour.RED,
                OptionalInt.of(10_000)))
        .isEqualTo(LightCharacter.parse("Fl(2+1) R 10s"));
    assertThat(LightCharacter.ofMorse("a", LightColour.WHITE, OptionalInt.empty()))
        .isEqualTo(LightCharacter.parse("Mo(A)"));
    assertThat(LightCharacter.of(LightClass.QUICK, LightColour.GREEN, OptionalInt.empty()))
        .isEqualTo(LightCharacter.parse("Q G"));
  }

  @Test
  void coloursOfSectorsAreNotShownByTurns() {
    LightCharacter sectors = LightCharacter.parse("Fl WRG 4s");
    LightCharacter turns = LightCharacter.parse("Al.Fl WRG 9s");
    assertThat(sectors.sectored()).isTrue();
    assertThat(sectors.timeline().flashes()).isEqualTo(1);
    assertThat(turns.sectored()).isFalse();
    assertThat(turns.timeline().flashes()).isEqualTo(3);
  }

  @Test
  void saysWhenAPeriodOrALengthIsAssumed() {
    assertThat(LightCharacter.parse("Iso 4s").timeline().assumed()).isFalse();
    assertThat(LightCharacter.parse("Iso").timeline().assumed()).isTrue();
    assertThat(LightCharacter.parse("Fl 4s").timeline().assumed()).isTrue();
    assertThat(LightCharacter.parse("F").timeline().assumed()).isFalse();
    assertThat(LightCharacter.parse("Fl W [0.5;3.5]").timeline().assumed()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "Q, 1000",
    "VQ, 500",
    "Fl, 4000",
    "Q(3), 10000",
    "VQ(3), 5000",
    "VQ(9), 10000",
    "Q(9), 15000",
    "Q(6)+LFl, 15000",
    "VQ(6)+LFl, 10000",
    "LFl, 10000",
    "Mo(A), 8000"
  })
  void takesTheUsualPeriodWhereNoneIsStated(String text, int millis) {
    LightCharacter light = LightCharacter.parse(text);
    assertThat(light.periodMillis()).isEmpty();
    assertThat(light.timeline().periodMillis()).hasValue(millis);
  }
}
