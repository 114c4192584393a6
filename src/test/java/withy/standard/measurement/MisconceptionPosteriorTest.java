package withy.standard.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.standard.measurement.Figures.number;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import withy.core.measurement.LearnerModel;
import withy.core.measurement.LearnerState;
import withy.core.response.OfferedOption;
import withy.core.response.Response;

/** Latent classes after Rudner 2009, Practical Assessment, Research and Evaluation 14(8). */
class MisconceptionPosteriorTest {
  private static final Offset<Double> TEN_DIGITS = within(1e-9);
  private static final LearnerModel MODEL =
      new LearnerModel(List.of("M1", "M2", "M3"), List.of(0.5, 0.15, 0.15, 0.1, 0.1), 0);

  @Test
  void findsTheMisconceptionBehindFiveAnswers() {
    List<Response> answers = new ArrayList<>();
    for (CSVRecord row : Figures.of("misconception_posterior.csv")) {
      if (!row.get("option_tags").isEmpty()) {
        answers.add(answer(row));
      }
      LearnerState state = MODEL.after("Ada", "lateral-side", answers);
      assertThat(state.answers()).isEqualTo(answers.size());
      assertThat(state.knows()).isEqualTo(number(row, "knows"), TEN_DIGITS);
      assertThat(state.guesses()).isEqualTo(number(row, "guess"), TEN_DIGITS);
      for (String belief : List.of("M1", "M2", "M3")) {
        assertThat(state.misconceptions().get(belief)).isEqualTo(number(row, belief), TEN_DIGITS);
      }
    }
    assertThat(answers).hasSize(5);
  }

  private static Response answer(CSVRecord row) {
    List<OfferedOption> offered = new ArrayList<>();
    for (String tag : row.get("option_tags").split("\\|")) {
      String belief = tag.equals("-") ? OfferedOption.UNEXPLAINED : tag;
      offered.add(new OfferedOption("o" + offered.size(), tag.equals("C") ? null : belief));
    }
    OfferedOption chosen = offered.get(Integer.parseInt(row.get("chosen_index")));
    return new Response(
        "Ada",
        "a1",
        row.get("item"),
        "side",
        "iala-a",
        List.of("lateral-side"),
        "o0",
        chosen.value(),
        chosen.misconception(),
        offered,
        chosen.value().equals("o0"),
        0,
        Instant.EPOCH);
  }
}
