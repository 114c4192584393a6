package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.usecase.Refusals.assertRefused;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import withy.catalogue.DemoClassReader;
import withy.catalogue.WaterReader;
import withy.core.measurement.ConceptError;
import withy.core.measurement.Review;
import withy.core.measurement.Verdict;
import withy.core.response.Response;
import withy.store.MemoryStore;
import withy.store.Store;

class DemoClassTest {
  private static final Store STORE = MemoryStore.create();
  private static final School SCHOOL = School.over(STORE.ports(new WaterReader()), 7);
  private static final DemoClass DEMO =
      new DemoClass(
          STORE.ports(new WaterReader()),
          School.CHEAP,
          SCHOOL.clock,
          SCHOOL.secrets,
          DemoClassReader.read());

  private static final SchoolClass MADE = DEMO.fill();

  @AfterAll
  static void close() {
    STORE.close();
  }

  @Test
  void showsTheWeakSpotThatWasPlanted() {
    InstructorCaller marlo = SCHOOL.instructor();

    Review review = SCHOOL.cases.reviewClass().review(marlo, MADE.id());

    ConceptError weakest = review.concepts().get(0);
    assertThat(weakest.concept()).isEqualTo("cardinal-side");
    assertThat(weakest.verdict()).isEqualTo(Verdict.WEAK);
    assertThat(weakest.beliefs().get(0).misconception()).isEqualTo("danger-named");
    assertThat(weakest.beliefs().get(0).learners()).isPositive();
    assertThat(review.concepts())
        .filteredOn(each -> each.verdict() == Verdict.WEAK)
        .extracting(ConceptError::concept)
        .containsExactly("cardinal-side");
    assertThat(SCHOOL.cases.reviewClass().silent(marlo, MADE.id())).containsExactly("Wren");
  }

  @Test
  void isSpreadOverPastDaysAndHasOneDrillDoneAndOneOpen() {
    InstructorCaller marlo = SCHOOL.instructor();
    Instant now = SCHOOL.clock.instant();

    List<Response> responses = SCHOOL.cases.reviewClass().responses(marlo, MADE.id());
    List<AssignDrill.Progress> drills = SCHOOL.cases.assignDrill().progress(marlo, MADE.id());

    assertThat(responses).allMatch(each -> each.answeredAt().isBefore(now));
    Instant first = responses.get(0).answeredAt();
    Instant last = responses.get(responses.size() - 1).answeredAt();
    assertThat(Duration.between(first, last)).isGreaterThan(Duration.ofDays(4));
    assertThat(drills).hasSize(3);
    assertThat(drills.get(0).assignment().due()).isAfter(now);
    assertThat(drills.get(1).assignment().due()).isBefore(now);
    assertThat(drills.get(0).learners()).extracting(each -> each.answered()).contains(0, 12);
  }

  @Test
  void goesOnlyWhereThereIsNothing() {
    assertRefused(Reason.NOT_EMPTY, DEMO::fill);
  }

  @Test
  void isNobodysUntilTheServerIsSetUp() {
    assertThat(MADE.instructor()).isNull();
    assertThat(SCHOOL.cases.openClass().classes(SCHOOL.instructor())).hasSize(1);
  }
}
