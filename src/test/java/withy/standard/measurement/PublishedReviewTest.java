package withy.standard.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.fixture.Answer.by;
import static withy.standard.measurement.Figures.number;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import withy.core.measurement.ConceptError;
import withy.core.measurement.Review;
import withy.core.measurement.Verdict;
import withy.core.response.Response;

/** Korn and Graubard 1998, Survey Methodology 24:193, from the responses on. */
class PublishedReviewTest {
  @Test
  void watchesAClassThatErrsInThreeOfEight() {
    ConceptError error = error(0);
    assertThat(error.rate().answers()).isEqualTo(20);
    assertThat(error.rate().mean()).isEqualTo(0.375);
    assertThat(error.rate().effectiveAnswers()).isEqualTo(20.0);
    assertThat(error.rate().lower()).isEqualTo(0.2171, within(5e-5));
    assertThat(error.rate().upper()).isEqualTo(0.5580, within(5e-5));
    assertThat(error.rate().aboveTolerance()).isEqualTo(0.8982, within(5e-5));
    assertThat(error.rate().wide()).isFalse();
    assertThat(error.verdict()).isEqualTo(Verdict.WATCH);
  }

  @Test
  void isLessSureWhereFourOfTenAreAbsent() {
    ConceptError error = error(1);
    assertThat(error.rate().aboveTolerance()).isEqualTo(0.8489, within(5e-5));
    assertThat(error.rate().wide()).isTrue();
    assertThat(error.verdict()).isEqualTo(Verdict.WATCH);
  }

  @Test
  void findsAClassSoundThatMadeNoError() {
    ConceptError error = error(2);
    assertThat(error.rate().lower()).isZero();
    assertThat(error.rate().upper()).isEqualTo(0.1038, within(5e-5));
    assertThat(error.verdict()).isEqualTo(Verdict.SOUND);
  }

  private static ConceptError error(int example) {
    CSVRecord row = Figures.of("class_rate_example.csv").get(example);
    Review review = Review.of(responses(row), (int) number(row, "class_size"));
    assertThat(review.concepts()).hasSize(1);
    return review.concepts().get(0);
  }

  private static List<Response> responses(CSVRecord row) {
    String[] errors = row.get("errors_per_learner").split(" ");
    String[] answers = row.get("answers_per_learner").split(" ");
    List<Response> responses = new ArrayList<>();
    for (int i = 0; i < errors.length; i++) {
      for (int item = 0; item < Integer.parseInt(answers[i]); item++) {
        var answer = by("learner-" + i).to("q" + item);
        responses.add(item < Integer.parseInt(errors[i]) ? answer.wrong() : answer.right());
      }
    }
    return responses;
  }
}
