package withy.core.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.fixture.Answer.by;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import withy.core.response.Response;
import withy.fixture.Answer;

class ConfusionsTest {
  private final List<Response> answers = new ArrayList<>();

  @Test
  void countsLearnersNotAnswers() {
    answers.add(cardinal("Ada", "q1").chose("west-cardinal"));
    answers.add(cardinal("Ada", "q2").chose("west-cardinal"));
    answers.add(cardinal("Bo", "q3").right());
    Confusion pair = pair("west-cardinal");
    assertThat(pair.learners()).isEqualTo(1);
    assertThat(pair.times()).isEqualTo(2);
    assertThat(pair.offered()).isEqualTo(3);
  }

  @Test
  void weighsThePairAgainstSlipsOfThoseWhoWereOfferedIt() {
    for (String learner : List.of("Ada", "Bo", "Cy", "Di")) {
      answers.add(cardinal(learner, learner + "1").chose("west-cardinal"));
      answers.add(cardinal(learner, learner + "2").right());
    }
    double slip = 0.10 / 2;
    double once = 1 - (1 - slip) * (1 - slip);
    double tail = Math.pow(once, 4);
    Confusion pair = pair("west-cardinal");
    assertThat(pair.adjustedP()).isEqualTo(2 * tail, within(1e-12));
    assertThat(pair.listed()).isTrue();
    assertThat(pair("special").adjustedP()).isEqualTo(1);
  }

  @Test
  void listsNoPairThatTwoMade() {
    answers.add(cardinal("Ada", "q1").chose("west-cardinal"));
    answers.add(cardinal("Bo", "q1").chose("west-cardinal"));
    assertThat(pair("west-cardinal").adjustedP()).isLessThan(0.10);
    assertThat(pair("west-cardinal").listed()).isFalse();
  }

  @Test
  void putsNotSureInNoPairButCountsTheOffer() {
    answers.add(cardinal("Ada", "q1").notSure());
    assertThat(pair("west-cardinal").offered()).isEqualTo(1);
    assertThat(pair("west-cardinal").times()).isZero();
  }

  @Test
  void looksAtItemsThatAskForTheKindAlone() {
    answers.add(by("Ada").form("side").wrong());
    assertThat(Confusions.of(LearnerSums.of(answers))).isEmpty();
  }

  @Test
  void putsTheMostTellingPairFirst() {
    for (String learner : List.of("Ada", "Bo", "Cy")) {
      answers.add(cardinal(learner, "q1").chose("west-cardinal"));
    }
    assertThat(Confusions.of(LearnerSums.of(answers)))
        .extracting(Confusion::answered)
        .containsExactly("west-cardinal", "special");
  }

  private Confusion pair(String answered) {
    return Confusions.of(LearnerSums.of(answers)).stream()
        .filter(pair -> pair.answered().equals(answered))
        .findFirst()
        .orElseThrow();
  }

  private static Answer cardinal(String learner, String item) {
    return by(learner)
        .to(item)
        .form("identify")
        .offered("east-cardinal", "west-cardinal=cones-swapped", "special=unexplained");
  }
}
