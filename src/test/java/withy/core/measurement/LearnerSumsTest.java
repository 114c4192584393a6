package withy.core.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.fixture.Answer.by;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import withy.core.response.OfferedOption;
import withy.core.response.Response;
import withy.fixture.Answer;

class LearnerSumsTest {
  private static final List<String> BELIEFS = List.of("a", "b", "c", "d");

  /** The chances worked out answer by answer, as section 6 of the reference has them. */
  @Property(tries = 200)
  void givesTheStateThatAnswerByAnswerGives(@ForAll long seed) {
    List<Response> answers = answers(new Random(seed), 1 + (int) Math.floorMod(seed, 40L));
    LearnerState state = LearnerModel.of(BELIEFS).after("Ada", "lateral-side", answers);
    double[] expected = stepByStep(answers);
    assertThat(state.knows()).isCloseTo(expected[0], within(1e-12));
    for (int i = 0; i < BELIEFS.size(); i++) {
      assertThat(state.misconceptions().get(BELIEFS.get(i)))
          .isCloseTo(expected[i + 1], within(1e-12));
    }
    assertThat(state.guesses()).isCloseTo(expected[5], within(1e-12));
  }

  @Test
  void staysExactOverThousandsOfAnswers() {
    List<Response> answers = answers(new Random(7), 5000);
    LearnerState state = LearnerModel.of(BELIEFS).after("Ada", "lateral-side", answers);
    double[] expected = stepByStep(answers);
    assertThat(state.knows()).isCloseTo(expected[0], within(1e-9));
    assertThat(state.guesses()).isCloseTo(expected[5], within(1e-9));
  }

  @Test
  void addsUpToTheReviewOfTheAnswersThemselves() {
    List<Response> answers = new ArrayList<>();
    Random random = new Random(3);
    for (String learner : List.of("Ada", "Bo", "Cy")) {
      answers.addAll(answers(random, learner, 30));
    }
    LearnerSums whole = LearnerSums.none("Bo");
    for (Response each : answers) {
      whole = each.learner().equals("Bo") ? whole.plus(each) : whole;
    }
    assertThat(LearnerSums.of(answers)).hasSize(3).contains(whole);
    assertThat(Review.ofSums(LearnerSums.of(answers), 9)).isEqualTo(Review.of(answers, 9));
  }

  @Test
  void keepsRapidAnswersInTheRatesAndOutOfTheStates() {
    Response slow = by("Ada").wrong();
    Response fast = rapid(by("Ada").to("q2").after(1).wrong());
    Review review = Review.of(List.of(slow, fast));
    assertThat(review.concepts().get(0).rate().answers()).isEqualTo(2);
    assertThat(review.items().get(0).answers()).isEqualTo(2);
    assertThat(review.learners()).isEqualTo(Review.of(List.of(slow)).learners());
    assertThat(LearnerSums.of(List.of(slow, fast)).get(0).rapid()).isEqualTo(1);
  }

  static Response rapid(Response slow) {
    return new Response(
        slow.learner(),
        slow.assignment(),
        slow.item(),
        slow.form(),
        slow.practice(),
        slow.concepts(),
        slow.key(),
        slow.option(),
        slow.misconception(),
        slow.offered(),
        slow.correct(),
        300,
        slow.answeredAt(),
        true);
  }

  private static List<Response> answers(Random random, int count) {
    return answers(random, "Ada", count);
  }

  private static List<Response> answers(Random random, String learner, int count) {
    List<Response> answers = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Answer item =
          by(learner)
              .to("q" + i)
              .after(i)
              .form(random.nextBoolean() ? "side" : "identify")
              .offered(
                  "key",
                  "x=" + BELIEFS.get(random.nextInt(2)),
                  "y=" + BELIEFS.get(2 + random.nextInt(2)),
                  "z=unexplained");
      int chosen = random.nextInt(5);
      answers.add(
          chosen == 4 ? item.notSure() : item.chose(List.of("key", "x", "y", "z").get(chosen)));
    }
    return answers;
  }

  private static double[] stepByStep(List<Response> answers) {
    double[] state = {.7, .05, .05, .05, .05, .1};
    for (Response answer : answers) {
      double sum = 0;
      for (int i = 0; i < state.length; i++) {
        state[i] *= likelihood(i, answer);
        sum += state[i];
      }
      double known = state[0] / sum;
      for (int i = 1; i < state.length; i++) {
        state[i] = .9 * state[i] / sum;
      }
      state[0] = known + .1 * (1 - known);
    }
    return state;
  }

  private static double likelihood(int state, Response answer) {
    if (state == 5) {
      return answer.option() == null ? .75 : .25;
    }
    boolean tempted =
        state > 0
            && answer.offered().stream()
                .map(OfferedOption::misconception)
                .anyMatch(BELIEFS.get(state - 1)::equals);
    if (tempted) {
      boolean fell = BELIEFS.get(state - 1).equals(answer.misconception());
      return fell ? .75 : answer.option() == null ? .25 : .25 / 3;
    }
    return answer.correct() ? .9 : answer.option() == null ? .1 : .1 / 3;
  }
}
