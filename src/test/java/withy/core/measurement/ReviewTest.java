package withy.core.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static withy.fixture.Answer.by;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import withy.core.response.Response;
import withy.fixture.Answer;

class ReviewTest {
  @Test
  void saysNothingOfNoResponses() {
    assertThat(Review.of(List.of()))
        .isEqualTo(new Review(0, List.of(), List.of(), List.of(), List.of()));
    assertThat(Review.of(List.of(), 12).classSize()).isEqualTo(12);
  }

  @Test
  void countsTheEarliestAnswerToAnItemWhereverItIsListed() {
    Review review = Review.of(List.of(by("Ada").after(5).right(), by("Ada").after(1).wrong()));
    assertThat(review.concepts().get(0).rate().mean()).isEqualTo(1);
    assertThat(review.items().get(0).answers()).isEqualTo(1);
    assertThat(review.learners().get(0).answers()).isEqualTo(1);
  }

  @Test
  void countsTheOneListedFirstOfTwoAtTheSameInstant() {
    Review review = Review.of(List.of(by("Ada").right(), by("Ada").wrong()));
    assertThat(review.concepts().get(0).rate().mean()).isZero();
  }

  @Test
  void takesTheSameItemOfAnotherLearnerOrAssignmentForAnotherItem() {
    Review review =
        Review.of(List.of(by("Ada").right(), by("Bo").right(), by("Ada").of("a2").right()));
    assertThat(review.concepts().get(0).rate().answers()).isEqualTo(3);
  }

  @Test
  void countsNotSureAsAnAnswerThatIsNotCorrect() {
    Review review = Review.of(List.of(by("Ada").notSure(), by("Ada").to("q2").right()));
    assertThat(review.concepts().get(0).rate().mean()).isEqualTo(0.5);
    assertThat(review.items().get(0).facility()).isEqualTo(0.5);
  }

  @Test
  void putsTheWeakestConceptFirstAndTiesByName() {
    List<Response> responses = new ArrayList<>();
    for (String concept : List.of("region", "numbering", "clearance")) {
      Answer answer = by("Ada").to(concept).on(concept);
      responses.add(concept.equals("region") ? answer.wrong() : answer.right());
    }
    assertThat(Review.of(responses).concepts())
        .extracting(ConceptError::concept)
        .containsExactly("region", "clearance", "numbering");
  }

  @Test
  void namesTheBeliefBehindAWeakConceptAndHowManyHoldIt() {
    List<Response> responses = new ArrayList<>();
    for (String learner : List.of("Ada", "Bo", "Cy")) {
      for (int item = 0; item < 3; item++) {
        Answer answer = by(learner).to("q" + item).after(item);
        responses.add(learner.equals("Cy") ? answer.right() : answer.wrong());
      }
    }
    Belief belief = Review.of(responses).concepts().get(0).beliefBehind();
    assertThat(belief).isNotNull();
    assertThat(belief.misconception()).isEqualTo("region-swapped");
    assertThat(belief.learners()).isEqualTo(2);
    assertThat(belief.expected()).isBetween(1.2, 2.0);
  }

  @Test
  void namesNoBeliefWhereNoneIsLikely() {
    assertThat(Review.of(List.of(by("Ada").right())).concepts().get(0).beliefBehind()).isNull();
  }

  @Test
  void takesAnUnexplainedOptionForNoBelief() {
    Review review = Review.of(List.of(by("Ada").offered("a", "b=unexplained").wrong()));
    assertThat(review.learners().get(0).misconceptions()).isEmpty();
    assertThat(review.concepts().get(0).beliefs()).isEmpty();
  }

  @Test
  void saysNothingOfDiscriminationBelowThirtyLearners() {
    assertThat(discrimination(29)).isNull();
    assertThat(discrimination(30)).isEqualTo(1.0);
  }

  @Test
  void saysNothingOfDiscriminationWhereAllDidAlike() {
    List<Response> responses = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      responses.add(by("learner-" + i).to("q1").right());
      responses.add(by("learner-" + i).to("q2").right());
    }
    assertThat(Review.of(responses).items().get(0).discrimination()).isNull();
  }

  @Test
  void refusesAClassSmallerThanThoseWhoAnswered() {
    List<Response> two = List.of(by("Ada").right(), by("Bo").right());
    assertThatIllegalArgumentException().isThrownBy(() -> Review.of(two, 1));
  }

  @Property(tries = 50)
  void givesTheSameReviewInWhateverOrderTheResponsesAreListed(@ForAll long seed) {
    Random random = new Random(seed);
    List<Response> responses = responses(random);
    Review review = Review.of(responses, 40);
    Collections.shuffle(responses, random);
    assertThat(Review.of(responses, 40)).isEqualTo(review);
  }

  @Property(tries = 50)
  void keepsEveryFigureWithinItsBounds(@ForAll long seed) {
    Review review = Review.of(responses(new Random(seed)), 40);
    for (ConceptError error : review.concepts()) {
      ClassRate rate = error.rate();
      assertThat(rate.effectiveAnswers()).isBetween(1.0, (double) rate.answers());
      assertThat(rate.lower()).isBetween(0.0, rate.mean());
      assertThat(rate.upper()).isBetween(rate.mean(), 1.0);
    }
    for (LearnerState state : review.learners()) {
      double beliefs = state.misconceptions().values().stream().mapToDouble(d -> d).sum();
      assertThat(state.knows() + beliefs + state.guesses()).isBetween(1 - 1e-12, 1 + 1e-12);
    }
  }

  private static List<Response> responses(Random random) {
    List<Response> responses = new ArrayList<>();
    int count = 1 + random.nextInt(120);
    for (int minute = 0; minute < count; minute++) {
      Answer answer =
          by("learner-" + random.nextInt(8))
              .to("q" + random.nextInt(40))
              .on("concept-" + random.nextInt(3))
              .form(random.nextBoolean() ? "identify" : "side")
              .after(minute);
      int chance = random.nextInt(10);
      responses.add(chance < 6 ? answer.right() : chance < 9 ? answer.wrong() : answer.notSure());
    }
    return responses;
  }

  private static Double discrimination(int learners) {
    List<Response> responses = new ArrayList<>();
    for (int i = 0; i < learners; i++) {
      Answer one = by("learner-" + i).to("q1").form("side");
      Answer other = by("learner-" + i).to("q2").form("light");
      responses.add(i % 2 == 0 ? one.right() : one.wrong());
      responses.add(i % 2 == 0 ? other.right() : other.wrong());
    }
    return Review.of(responses).items().get(0).discrimination();
  }
}
