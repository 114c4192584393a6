package withy.standard.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.fixture.Answer.by;
import static withy.standard.measurement.Figures.number;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import withy.core.measurement.Distractor;
import withy.core.measurement.FormAnalysis;
import withy.core.measurement.KindAnalysis;
import withy.core.measurement.LearnerSums;
import withy.core.measurement.PointBiserial;
import withy.core.measurement.Review;
import withy.core.response.Response;
import withy.fixture.Answer;

/** Bock and Lieberman 1970, Psychometrika 35:179: LSAT sections 6 and 7. */
class PointBiserialTest {
  private static final int ITEMS = 5;
  private static final Offset<Double> TEN_DIGITS = within(1e-9);

  @ParameterizedTest
  @ValueSource(strings = {"LSAT6", "LSAT7"})
  void correlatesItemsWithTheTestAndWithItsRest(String section) {
    for (int item = 1; item <= ITEMS; item++) {
      PointBiserial test = new PointBiserial();
      PointBiserial rest = new PointBiserial();
      for (CSVRecord row : candidates(section)) {
        boolean right = right(row, item);
        test.add(right, total(row));
        rest.add(right, total(row) - (right ? 1 : 0));
      }
      CSVRecord published = Figures.of("item_stats_" + section + ".csv").get(item - 1);
      assertThat(test.coefficient())
          .isEqualTo(number(published, "point_biserial_incl"), TEN_DIGITS);
      assertThat(rest.coefficient())
          .isEqualTo(number(published, "point_biserial_excl(corrected)"), TEN_DIGITS);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"LSAT6", "LSAT7"})
  void analysesFormsAsItemsWhereEachLearnerAnswersEachFormOnce(String section) {
    List<CSVRecord> published = Figures.of("item_stats_" + section + ".csv");
    List<FormAnalysis> forms = Review.of(responses(section)).items();
    assertThat(forms).hasSize(ITEMS);
    for (int i = 0; i < ITEMS; i++) {
      FormAnalysis form = forms.get(i);
      assertThat(form.form()).isEqualTo(published.get(i).get("item"));
      assertThat(form.answers()).isEqualTo(1000);
      assertThat(form.facility()).isEqualTo(number(published.get(i), "p"), TEN_DIGITS);
      assertThat(form.discrimination())
          .isEqualTo(number(published.get(i), "point_biserial_excl(corrected)"), TEN_DIGITS);
    }
  }

  /**
   * A wrong answer of two is chosen where the right one is not: its coefficient is the opposite.
   */
  @ParameterizedTest
  @ValueSource(strings = {"LSAT6", "LSAT7"})
  void analysesKindsAsItemsWhereEachLearnerAnswersEachKindOnce(String section) {
    List<Response> all = responses(section);
    List<LearnerSums> sums = LearnerSums.of(all);
    for (CSVRecord published : Figures.of("item_stats_" + section + ".csv").subList(0, ITEMS)) {
      List<Response> answers =
          all.stream().filter(each -> each.form().equals(published.get("item"))).toList();
      KindAnalysis kind = KindAnalysis.of(answers, sums);
      assertThat(kind.answers()).isEqualTo(1000);
      assertThat(kind.learners()).isEqualTo(1000);
      assertThat(kind.facility()).isEqualTo(number(published, "p"), TEN_DIGITS);
      assertThat(kind.discrimination())
          .isEqualTo(number(published, "point_biserial_excl(corrected)"), TEN_DIGITS);
      int wrong = 1000 - kind.right();
      assertThat(kind.distractors())
          .containsExactly(
              new Distractor("region-swapped", wrong, 1000, Distractor.Work.FUNCTIONAL));
    }
  }

  /** The project's reference, 3: small enough to follow by hand. */
  @Test
  void correlatesTheItemsOfTenLearners() {
    List<CSVRecord> items = Figures.of("ten_learners.csv");
    for (CSVRecord item : items) {
      PointBiserial rest = new PointBiserial();
      String answers = item.get("answers");
      for (int learner = 0; learner < answers.length(); learner++) {
        int at = learner;
        long total = items.stream().filter(each -> each.get("answers").charAt(at) == '1').count();
        boolean right = answers.charAt(learner) == '1';
        rest.add(right, total - (right ? 1 : 0));
      }
      assertThat(rest.coefficient()).isEqualTo(number(item, "corrected"), within(5e-5));
      long right = answers.chars().filter(each -> each == '1').count();
      assertThat(right / 10.0).isEqualTo(number(item, "p"), TEN_DIGITS);
    }
  }

  private static List<Response> responses(String section) {
    List<Response> responses = new ArrayList<>();
    int candidate = 0;
    for (CSVRecord row : candidates(section)) {
      candidate++;
      for (int item = 1; item <= ITEMS; item++) {
        Answer answer = by("candidate-" + candidate).to("q" + item).form("Q" + item);
        responses.add(right(row, item) ? answer.right() : answer.wrong());
      }
    }
    return responses;
  }

  private static List<CSVRecord> candidates(String section) {
    List<CSVRecord> candidates = new ArrayList<>();
    for (CSVRecord row : Figures.of("lsat_patterns.csv")) {
      int times = Integer.parseInt(row.get("freq_" + section));
      IntStream.range(0, times).forEach(i -> candidates.add(row));
    }
    assertThat(candidates).hasSize(1000);
    return candidates;
  }

  private static boolean right(CSVRecord row, int item) {
    return row.get("Q" + item).equals("1");
  }

  private static int total(CSVRecord row) {
    return IntStream.rangeClosed(1, ITEMS).map(item -> right(row, item) ? 1 : 0).sum();
  }
}
