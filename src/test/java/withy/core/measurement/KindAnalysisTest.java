package withy.core.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.fixture.Answer.by;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import withy.core.measurement.Distractor.Work;
import withy.core.response.Response;
import withy.fixture.Answer;

/** Own cases, worked out by hand. */
class KindAnalysisTest {
  private static final String KIND = "identify";

  private final List<Response> all = new ArrayList<>();

  /** Answers an item of the kind, and as many others, so many of them right. */
  private void add(String learner, String chosen, int othersRight, int others) {
    Answer asked =
        by(learner)
            .to("kind-" + all.size())
            .form(KIND)
            .offered("key", "a=led", "b=rare", "c=strong", "d=unexplained");
    all.add(chosen == null ? asked.notSure() : asked.chose(chosen));
    for (int i = 0; i < others; i++) {
      Answer other = by(learner).to("other-" + all.size()).form("side");
      all.add(i < othersRight ? other.right() : other.wrong());
    }
  }

  private KindAnalysis analysed() {
    List<Response> kind = all.stream().filter(each -> each.form().equals(KIND)).toList();
    return KindAnalysis.of(kind, LearnerSums.of(all));
  }

  private Distractor wrong(String misconception) {
    return analysed().distractors().stream()
        .filter(each -> each.misconception().equals(misconception))
        .findFirst()
        .orElseThrow();
  }

  /** Of forty learners 20 are right; 10 are led astray, who are weak; 8 are, who are strong. */
  private void addForty() {
    for (int i = 0; i < 20; i++) {
      add("right " + i, "key", i < 10 ? 3 : 2, 4);
    }
    for (int i = 0; i < 10; i++) {
      add("led " + i, "a", 1, 4);
    }
    for (int i = 0; i < 8; i++) {
      add("strong " + i, "c", 4, 4);
    }
    add("rare", "b", 0, 4);
    add("unexplained", "d", 0, 4);
  }

  @Test
  void tellsWhichOptionsDoTheirWork() {
    addForty();
    assertThat(wrong("led")).isEqualTo(new Distractor("led", 10, 40, Work.FUNCTIONAL));
    assertThat(wrong("rare")).isEqualTo(new Distractor("rare", 1, 40, Work.HARDLY_CHOSEN));
    assertThat(wrong("strong")).isEqualTo(new Distractor("strong", 8, 40, Work.NOT_BY_THE_WEAKER));
    assertThat(wrong("unexplained")).isEqualTo(new Distractor("unexplained", 1, 40, null));
    assertThat(analysed().distractors())
        .extracting(Distractor::misconception)
        .containsExactly("led", "strong", "rare", "unexplained");
  }

  /** Twenty right with a mean of 2.5, twenty wrong with a mean of 2.1, of 40 with 2.3. */
  @Test
  void comparesWithAllElse() {
    addForty();
    double variance = (10 * 9 + 10 * 4 + 10 * 1 + 8 * 16) / 40.0 - 2.3 * 2.1 - 2.3 * 0.2;
    double expected = (2.5 - 2.1) * 0.5 / Math.sqrt(variance);
    assertThat(analysed().discrimination()).isEqualTo(expected, within(1e-12));
  }

  @Test
  void leavesOutAllAnswersOfTheKindAndNotOnlyTheOneLookedAt() {
    for (int i = 0; i < 40; i++) {
      boolean strong = i % 2 == 0;
      add("learner " + i, "key", strong ? 4 : 0, 4);
      add("learner " + i, strong ? "a" : "key", 0, 0);
    }
    // strong: one of two right; weak: both right; elsewhere all right and none right
    assertThat(analysed().discrimination()).isEqualTo(-Math.sqrt(1 / 3.0), within(1e-12));
  }

  /** One of one elsewhere is more than six of eight. */
  @Test
  void comparesWithTheShareAndNotTheNumberOfWhatWasRightElsewhere() {
    for (int i = 0; i < 40; i++) {
      boolean right = i % 2 == 0;
      add("learner " + i, right ? "key" : "a", right ? 1 : 6, right ? 1 : 8);
    }
    assertThat(analysed().discrimination()).isEqualTo(1, within(1e-12));
  }

  @Test
  void judgesNothingOfTwentyNineLearners() {
    for (int i = 0; i < 29; i++) {
      add("learner " + i, i % 2 == 0 ? "key" : "a", i % 2 == 0 ? 2 : 1, 2);
    }
    assertThat(analysed().isJudged()).isFalse();
    assertThat(analysed().discrimination()).isNull();
    assertThat(wrong("led").work()).isNull();
    add("learner 29", "a", 1, 2);
    assertThat(analysed().isJudged()).isTrue();
    assertThat(analysed().discrimination()).isEqualTo(1, within(1e-12));
    assertThat(wrong("led").work()).isEqualTo(Work.FUNCTIONAL);
  }

  @Test
  void judgesNoOptionThatFewerThanThirtyCouldChoose() {
    addForty();
    Answer seldom = by("led 0").to("seldom").form(KIND).offered("key", "e=seldom");
    all.add(seldom.right());
    assertThat(wrong("seldom")).isEqualTo(new Distractor("seldom", 0, 1, null));
  }

  @Test
  void tellsNothingWhereAllScoreAlike() {
    for (int i = 0; i < 30; i++) {
      add("learner " + i, i % 2 == 0 ? "key" : "a", 2, 4);
    }
    assertThat(analysed().discrimination()).isNull();
    assertThat(wrong("led").work()).isNull();
  }

  @Test
  void countsRapidAndUnsureAnswersAndTakesTheTimeOfTheOthers() {
    for (int i = 0; i < 5; i++) {
      add("learner " + i, i == 0 ? null : "key", 1, 1);
    }
    List<Response> kind =
        new ArrayList<>(all.stream().filter(each -> each.form().equals(KIND)).toList());
    for (int i = 0; i < 5; i++) {
      kind.set(i, timed(kind.get(i), List.of(200L, 100L, 9_000L, 4_000L, 3_000L).get(i), i < 2));
    }
    KindAnalysis found = KindAnalysis.of(kind, LearnerSums.of(all));
    assertThat(found.answers()).isEqualTo(5);
    assertThat(found.right()).isEqualTo(4);
    assertThat(found.unsure()).isEqualTo(1);
    assertThat(found.rapid()).isEqualTo(2);
    assertThat(found.medianMillis()).isEqualTo(4_000);
    assertThat(found.interval(0.90).lower()).isBetween(0.40, 0.50);
  }

  private static Response timed(Response from, long millis, boolean rapid) {
    return new Response(
        from.learner(),
        from.assignment(),
        from.item(),
        from.form(),
        from.practice(),
        from.concepts(),
        from.key(),
        from.option(),
        from.misconception(),
        from.offered(),
        from.correct(),
        millis,
        from.answeredAt(),
        rapid);
  }

  @Test
  void saysNothingOfNoAnswers() {
    KindAnalysis none = KindAnalysis.of(List.of(), List.of());
    assertThat(none.answers()).isZero();
    assertThat(none.medianMillis()).isZero();
    assertThat(none.distractors()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "-0.01, REVERSED",
    "0, POOR",
    "0.19, POOR",
    "0.20, MARGINAL",
    "0.29, MARGINAL",
    "0.30, GOOD",
    "0.39, GOOD",
    "0.40, VERY_GOOD",
    "1, VERY_GOOD"
  })
  void readsACoefficientByEbelsGuide(double coefficient, Separation expected) {
    assertThat(Separation.of(coefficient)).isEqualTo(expected);
  }
}
