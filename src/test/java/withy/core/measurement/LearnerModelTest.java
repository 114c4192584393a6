package withy.core.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static withy.fixture.Answer.by;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import withy.core.response.Response;

class LearnerModelTest {
  private static final Offset<Double> EXACTLY = within(1e-12);
  private static final LearnerModel STILL =
      new LearnerModel(List.of("region-swapped"), List.of(0.7, 0.2, 0.1), 0);

  @Test
  void startsFromWhatMostLearnersKnow() {
    LearnerState state = state(LearnerModel.of(List.of("a", "b")));
    assertThat(state.knows()).isEqualTo(0.7, EXACTLY);
    assertThat(state.misconceptions().values()).containsExactly(0.1, 0.1);
    assertThat(state.guesses()).isEqualTo(0.1, EXACTLY);
  }

  @Test
  void keepsTheRatioOfTheRestWhereAConceptHasNoMisconception() {
    LearnerState state = state(LearnerModel.of(List.of()));
    assertThat(state.knows()).isEqualTo(0.875, EXACTLY);
    assertThat(state.guesses()).isEqualTo(0.125, EXACTLY);
  }

  @Test
  void learnsATenthOfWhatIsMissingFromEachExplanation() {
    LearnerState before = state(STILL, by("Ada").wrong());
    LearnerState after = state(LearnerModel.of(List.of("region-swapped")), by("Ada").wrong());
    assertThat(1 - after.knows()).isEqualTo(0.9 * (1 - before.knows()), EXACTLY);
    assertThat(after.guesses()).isEqualTo(0.9 * before.guesses(), EXACTLY);
  }

  @Test
  void takesNotSureForAnErrorThatPointsToNoBelief() {
    LearnerState state = state(STILL, by("Ada").notSure());
    double sum = 0.7 * 0.1 + 0.2 * 0.25 + 0.1 * 0.5;
    assertThat(state.knows()).isEqualTo(0.7 * 0.1 / sum, EXACTLY);
    assertThat(state.misconceptions()).containsEntry("region-swapped", 0.2 * 0.25 / sum);
    assertThat(state.guesses()).isEqualTo(0.1 * 0.5 / sum, EXACTLY);
  }

  @Test
  void takesOneWhoHoldsABeliefNoOptionTemptsForOneWhoKnows() {
    Response answer =
        by("Ada").offered("north-cardinal", "safe-water=unexplained", "special=other").right();
    LearnerState state = state(STILL, answer);
    assertThat(state.misconceptions().get("region-swapped") / state.knows())
        .isEqualTo(0.2 / 0.7, EXACTLY);
  }

  @Test
  void sharesThePullBetweenTwoOptionsOfTheSameBelief() {
    Response answer =
        by("Ada").offered("c", "a=region-swapped", "b=region-swapped", "d=unexplained").chose("b");
    LearnerState state = state(STILL, answer);
    double sum = 0.7 * 0.1 / 3 + 0.2 * 0.75 / 2 + 0.1 / 4;
    assertThat(state.misconceptions().get("region-swapped"))
        .isEqualTo(0.2 * 0.75 / 2 / sum, EXACTLY);
  }

  @Test
  void readsTheBeliefNamedWithAFreeAnswer() {
    LearnerState state = state(STILL, free("54", "region-swapped", false));
    double sum = 0.7 * 0.1 / 3 + 0.2 * 0.75 + 0.1 / 4;
    assertThat(state.misconceptions().get("region-swapped")).isEqualTo(0.15 / sum, EXACTLY);
  }

  @Test
  void countsAFreeAnswerWithinTheToleranceAsKnowing() {
    LearnerState state = state(STILL, free("19.2", null, true));
    assertThat(state.knows()).isGreaterThan(0.75);
  }

  @Test
  void staysADistributionOverAThousandAnswers() {
    Response[] answers = Collections.nCopies(1000, by("Ada").right()).toArray(new Response[0]);
    LearnerState state = state(STILL, answers);
    assertThat(state.knows()).isBetween(0.999999, 1.0);
    assertThat(state.misconceptions().get("region-swapped")).isNotNaN().isNotNegative();
  }

  @Test
  void namesAMisconceptionFromThreeInFiveAndHelpFromFourInFive() {
    LearnerState state = state(STILL, by("Ada").wrong(), by("Ada").to("q2").wrong());
    assertThat(state.namedMisconception()).isEqualTo("region-swapped");
    assertThat(state.needsHelp()).isTrue();
    LearnerState unsure = state(STILL, by("Ada").notSure());
    assertThat(unsure.namedMisconception()).isNull();
    assertThat(unsure.needsHelp()).isFalse();
  }

  @Test
  void refusesAPriorThatLeavesOutAState() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LearnerModel(List.of("a"), List.of(0.9, 0.1), 0));
  }

  private static LearnerState state(LearnerModel model, Response... answers) {
    return model.after("Ada", "lateral-side", List.of(answers));
  }

  private static Response free(String option, String misconception, boolean correct) {
    return new Response(
        "Ada",
        "a1",
        "q1",
        "clearance",
        "iala-a",
        List.of("clearance"),
        "19.4",
        option,
        misconception,
        List.of(),
        correct,
        0,
        Instant.EPOCH);
  }
}
