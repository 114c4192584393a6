package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import withy.core.item.UnreadableQuantity.Flaw;
import withy.fixture.FreeItems;

class QuantityTest {
  private static final Quantity RANGE = FreeItems.RANGE;
  private static final Message MISTOOK = Message.of("mistook.unexplained");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "19.4      | 19.4",
        "19,4      | 19.4",
        "19.40     | 19.4",
        "019.4     | 19.4",
        "+19.4     | 19.4",
        "-3,5      | -3.5",
        "−3.5      | -3.5",
        "20        | 20",
        "20.       | 20",
        "20.0      | 20",
        ",5        | 0.5",
        "-0        | 0",
        "100       | 100",
        "' 19.4 '  | 19.4",
        "19.4M     | 19.4",
        "19.4 M    | 19.4",
        "19,4 nm   | 19.4",
        "19.4 NM   | 19.4",
      })
  void readsANumberAsPeopleTypeIt(String typed, String word) {
    assertThat(RANGE.read(typed)).isEqualTo(word);
    assertThat(RANGE.accepts(word)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "x",
        "M",
        "19.4.2",
        "1 200",
        "19..4",
        "--1",
        "1e3",
        "0x1F",
        "NaN",
        "١٩",
        "19 or 20",
        "1234567890123",
        "19.4 M or so",
        "99999999999999999999999999999999999999999999999999999999999"
      })
  void refusesWhatIsNoNumber(String typed) {
    assertThatThrownBy(() -> RANGE.read(typed))
        .isInstanceOfSatisfying(
            UnreadableQuantity.class, e -> assertThat(e.flaw()).isEqualTo(Flaw.NO_NUMBER));
  }

  @ParameterizedTest
  @ValueSource(strings = {"19.4 m", "19.4 km", "19.4°", "19.4 miles"})
  void refusesAnotherUnit(String typed) {
    assertThatThrownBy(() -> RANGE.read(typed))
        .isInstanceOfSatisfying(
            UnreadableQuantity.class, e -> assertThat(e.flaw()).isEqualTo(Flaw.OTHER_UNIT));
  }

  @Test
  void readsTheSameInEveryCountry() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(RANGE.read("19,4")).isEqualTo("19.4");
      assertThat(RANGE.key()).isEqualTo("19.4");
    } finally {
      Locale.setDefault(before);
    }
  }

  @ParameterizedTest
  @CsvSource({"18.8", "19.4", "20", "19.999"})
  void isRightWithinTheToleranceEndsIncluded(String given) {
    assertThat(RANGE.grade(given)).isEqualTo(Grade.RIGHT);
  }

  @ParameterizedTest
  @CsvSource({
    "12.8, REGION_SWAPPED",
    "14, REGION_SWAPPED",
    "12.81, REGION_SWAPPED",
    "12.79, DIRECTION_IGNORED",
    "11.6, DIRECTION_IGNORED",
    "18.79, UNEXPLAINED",
    "20.001, UNEXPLAINED",
    "-19.4, UNEXPLAINED",
  })
  void putsAWrongNumberDownToTheNearestBelief(String given, Misconception belief) {
    Grade grade = RANGE.grade(given);
    assertThat(grade.correct()).isFalse();
    assertThat(grade.misconception()).isEqualTo(belief);
    assertThat(grade.mistook() == null).isEqualTo(belief == Misconception.UNEXPLAINED);
  }

  @Test
  void refusesABeliefThatLeadsToWhatIsRight() {
    Quantity.Belief near = new Quantity.Belief(20, Misconception.REGION_SWAPPED, MISTOOK);
    Quantity.Belief far = new Quantity.Belief(20.1, Misconception.REGION_SWAPPED, MISTOOK);
    assertThatIllegalArgumentException().isThrownBy(() -> quantity(19.4, 0.6, near));
    assertThat(quantity(19.4, 0.6, far).beliefs()).hasSize(1);
    assertThat(Quantity.of(Unit.METRES, 19.4, 0.6, List.of(near, far)).beliefs())
        .containsExactly(far);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 1.0 / 3, 1e15})
  void refusesValuesThatNobodyWrites(double value) {
    assertThatIllegalArgumentException().isThrownBy(() -> quantity(value, 1));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesATolerancesThatIsNone(double tolerance) {
    assertThatIllegalArgumentException().isThrownBy(() -> quantity(1, tolerance));
  }

  @Test
  void refusesToGradeWhatIsNoWordForANumber() {
    assertThatIllegalArgumentException().isThrownBy(() -> RANGE.grade("19,4"));
    assertThat(RANGE.accepts("leave-to-port")).isFalse();
  }

  @Property(tries = 300)
  void rightMeansNoFurtherOffThanTheTolerance(
      @ForAll @IntRange(min = -5000, max = 5000) int value,
      @ForAll @IntRange(min = 1, max = 300) int tolerance,
      @ForAll @IntRange(min = -400, max = 400) int off) {
    Quantity asked = quantity(value / 10.0, tolerance / 10.0);
    String given = asked.read(tenths(value + off));
    assertThat(asked.grade(given).correct()).isEqualTo(Math.abs(off) <= tolerance);
  }

  @Property(tries = 300)
  void everyBeliefIsNamedByTheNumberToWhichItLeads(
      @ForAll @IntRange(min = -500, max = 500) int value,
      @ForAll @IntRange(min = -500, max = 500) int led) {
    List<Quantity.Belief> beliefs =
        List.of(new Quantity.Belief(led / 10.0, Misconception.REGION_SWAPPED, MISTOOK));
    Quantity asked = Quantity.of(Unit.METRES, value / 10.0, 0.5, beliefs);
    for (String each : asked.foreseen()) {
      assertThat(asked.accepts(each)).isTrue();
      assertThat(asked.grade(each).correct()).isEqualTo(each.equals(asked.key()));
    }
    assertThat(asked.led(Misconception.REGION_SWAPPED).isPresent())
        .isEqualTo(Math.abs(value - led) > 5);
  }

  private static String tenths(int tenths) {
    return (tenths < 0 ? "-" : "") + Math.abs(tenths) / 10 + "," + Math.abs(tenths) % 10;
  }

  private static Quantity quantity(double value, double tolerance, Quantity.Belief... beliefs) {
    return new Quantity(Unit.METRES, value, tolerance, List.of(beliefs));
  }
}
