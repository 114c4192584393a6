package withy.standard.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.standard.measurement.Figures.number;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import withy.core.measurement.BenjaminiHochberg;

/** Benjamini and Hochberg 1995, Journal of the Royal Statistical Society B 57:289, section 3.2. */
class BenjaminiHochbergTest {
  private final List<CSVRecord> rows = new ArrayList<>(Figures.of("bh1995.csv"));

  @Test
  void adjustsTheFifteenPublishedValues() {
    assertAdjusted();
  }

  @Test
  void adjustsThemInWhateverOrderTheyCome() {
    Collections.shuffle(rows, new Random(15));
    assertAdjusted();
  }

  @Test
  void rejectsTheFourThatThePaperRejects() {
    assertThat(adjusted().stream().filter(p -> p <= 0.05)).hasSize(4);
    for (int i = 0; i < rows.size(); i++) {
      assertThat(adjusted().get(i) <= 0.05).isEqualTo(rows.get(i).get("reject_q05").equals("1"));
    }
  }

  @Test
  void leavesOneTestAloneAndNoneEmpty() {
    assertThat(BenjaminiHochberg.adjusted(List.of(0.03))).containsExactly(0.03);
    assertThat(BenjaminiHochberg.adjusted(List.of())).isEmpty();
  }

  @Test
  void givesTiesTheSameValue() {
    assertThat(BenjaminiHochberg.adjusted(List.of(0.02, 0.5, 0.02, 0.02)))
        .satisfies(p -> assertThat(p.get(0)).isEqualTo(p.get(2)).isEqualTo(p.get(3)))
        .first()
        .satisfies(p -> assertThat(p).isEqualTo(0.02 * 4 / 3, within(1e-12)));
  }

  private List<Double> adjusted() {
    return BenjaminiHochberg.adjusted(rows.stream().map(row -> number(row, "p")).toList());
  }

  private void assertAdjusted() {
    List<Double> adjusted = adjusted();
    for (int i = 0; i < rows.size(); i++) {
      assertThat(adjusted.get(i)).isEqualTo(number(rows.get(i), "bh_adjusted"), within(1e-10));
    }
  }
}
