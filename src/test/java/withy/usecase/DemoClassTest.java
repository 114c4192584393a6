package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.usecase.Refusals.assertRefused;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.catalogue.DemoClassReader;
import withy.core.measurement.ConceptError;
import withy.core.measurement.Review;
import withy.core.measurement.Verdict;
import withy.core.response.Response;
import withy.store.MemoryStore;
import withy.store.Store;

class DemoClassTest {
  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports());
  private final DemoClass demo =
      new DemoClass(
          store.ports(), School.CHEAP, school.clock, school.secrets, DemoClassReader.read());

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void showsTheWeakSpotThatWasPlanted() {
    SchoolClass made = demo.fill();
    InstructorCaller marlo = school.instructor();

    Review review = school.cases.reviewClass().review(marlo, made.id());

    ConceptError weakest = review.concepts().get(0);
    assertThat(weakest.concept()).isEqualTo("cardinal-side");
    assertThat(weakest.verdict()).isEqualTo(Verdict.WEAK);
    assertThat(weakest.beliefs().get(0).misconception()).isEqualTo("danger-named");
    assertThat(weakest.beliefs().get(0).learners()).isPositive();
    assertThat(review.concepts().get(1).verdict()).isNotEqualTo(Verdict.WEAK);
    assertThat(school.cases.reviewClass().silent(marlo, made.id())).containsExactly("Wren");
  }

  @Test
  void isSpreadOverPastDaysAndHasOneDrillDoneAndOneOpen() {
    SchoolClass made = demo.fill();
    InstructorCaller marlo = school.instructor();
    Instant now = school.clock.instant();

    List<Response> responses = school.cases.reviewClass().responses(marlo, made.id());
    List<AssignDrill.Progress> drills = school.cases.assignDrill().progress(marlo, made.id());

    assertThat(responses).allMatch(each -> each.answeredAt().isBefore(now));
    Instant first = responses.get(0).answeredAt();
    Instant last = responses.get(responses.size() - 1).answeredAt();
    assertThat(Duration.between(first, last)).isGreaterThan(Duration.ofDays(4));
    assertThat(drills).hasSize(2);
    assertThat(drills.get(0).assignment().due()).isAfter(now);
    assertThat(drills.get(1).assignment().due()).isBefore(now);
    assertThat(drills.get(0).learners()).extracting(each -> each.answered()).contains(0, 12);
  }

  @Test
  void goesOnlyWhereThereIsNothing() {
    demo.fill();
    assertRefused(Reason.NOT_EMPTY, demo::fill);
  }

  @Test
  void leavesNoSessionBehind() {
    SchoolClass made = demo.fill();
    assertThat(made.instructor()).isNull();
    assertThat(school.learner(made, "Newcomer").schoolClass()).isEqualTo(made.id());
  }
}
