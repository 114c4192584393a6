package withy.core.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.fixture.Answer.by;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import withy.core.response.Response;

class NeedTest {
  private static final List<Response> ANSWERS = answers();

  private static List<Response> answers() {
    List<Response> answers = new ArrayList<>();
    for (String learner : List.of("Ada", "Bo", "Cy", "Di")) {
      boolean knows = learner.equals("Di");
      for (int i = 0; i < 4; i++) {
        var side = by(learner).to("s" + i).after(i);
        answers.add(knows ? side.right() : side.wrong());
        var safe = by(learner).to("w" + i).after(20 + i).on("safe-water");
        answers.add(learner.equals("Cy") ? safe.wrong() : safe.right());
      }
    }
    return answers;
  }

  @Test
  void isTheChancesOfNotKnowingAddedUp() {
    Review review = Review.of(ANSWERS);
    List<Need> needs = Need.of(review, LearnerSums.of(ANSWERS));
    assertThat(needs).extracting(Need::concept).containsExactly("lateral-side", "safe-water");
    double expected =
        review.learners().stream()
            .filter(each -> each.concept().equals("lateral-side"))
            .mapToDouble(each -> 1 - each.knows())
            .sum();
    assertThat(needs.get(0).expected()).isCloseTo(expected, within(1e-12)).isBetween(2.0, 3.2);
    assertThat(needs.get(0).heard()).isEqualTo(4);
    assertThat(needs.get(0).deviation()).isPositive();
  }

  @Test
  void beginsWithTheFirstAnswerOfEachLearner() {
    List<Response> answers =
        List.of(
            by("Ada").wrong(),
            by("Ada").to("q2").after(1).right(),
            by("Ada").to("q3").after(2).right(),
            by("Bo").right());
    ClassRate begun = Need.beginnings(LearnerSums.of(answers), 2).get("lateral-side");
    assertThat(begun.mean()).isEqualTo(0.5);
    assertThat(begun.answers()).isEqualTo(2);
    assertThat(Review.of(answers).concepts().get(0).rate().mean()).isLessThan(0.5);
  }

  @Test
  void groupsWhoNeedTheSame() {
    List<PracticalGroup> groups = PracticalGroup.of(Review.of(ANSWERS), 2);
    assertThat(groups.get(0).learners()).containsExactly("Ada", "Bo");
    assertThat(groups.get(0).needs()).containsExactly("lateral-side");
    assertThat(groups.get(1).learners()).containsExactly("Cy", "Di");
    assertThat(groups.get(1).needs()).isEmpty();
    assertThat(groups.stream().mapToInt(each -> each.learners().size()).sum()).isEqualTo(4);
    assertThat(PracticalGroup.of(Review.of(List.of()), 3)).isEmpty();
  }
}
