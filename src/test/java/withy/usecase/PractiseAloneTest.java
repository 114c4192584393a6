package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static withy.core.item.Misconception.REGION_SWAPPED;

import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.item.Concept;
import withy.store.MemoryStore;
import withy.store.Store;

class PractiseAloneTest {
  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports(), 21);
  private final SchoolClass tuesday = school.schoolClass();
  private final PractiseAlone practise = school.cases().practiseAlone();
  private final LearnerCaller tern = school.learner(tuesday, "Tern");

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void advisesNothingBeforeTheFirstAnswer() {
    assertThat(practise.advice(tern)).isEmpty();
  }

  @Test
  void advisesWhatIsLeastKnownAndNamesTheBelief() {
    school.answerRight(tern, school.assignment(tuesday, 6, Concept.SAFE_WATER), 6);
    swap(school.assignment(tuesday, 8, Concept.LATERAL_SIDE), 8);
    PractiseAlone.Advice advice = practise.advice(tern).orElseThrow();
    assertThat(advice.concept()).isEqualTo(Concept.LATERAL_SIDE);
    assertThat(advice.belief()).isEqualTo(REGION_SWAPPED);
    assertThat(advice.answers()).isEqualTo(8);
    assertThat(advice.settled()).isFalse();
  }

  @Test
  void advisesWhatWasLongestAgoOnceAllIsSettled() {
    school.answerRight(tern, school.assignment(tuesday, 8, Concept.SAFE_WATER), 8);
    school.clock().pass(Duration.ofDays(2));
    school.answerRight(tern, school.assignment(tuesday, 8, Concept.LATERAL_SIDE), 8);
    PractiseAlone.Advice advice = practise.advice(tern).orElseThrow();
    assertThat(advice.settled()).isTrue();
    assertThat(advice.concept()).isEqualTo(Concept.SAFE_WATER);
  }

  @Test
  void beginsAShortDrillThatNobodyElseSees() {
    Assignment own = practise.start(tern, Concept.LATERAL_SIDE, "Practice");
    assertThat(practise.start(tern, Concept.LATERAL_SIDE, "Practice").id()).isEqualTo(own.id());
    assertThat(school.cases().listAssignments().of(school.learner(tuesday, "Skua"))).isEmpty();
    school.answerRight(tern, own, own.composition().length());
    assertThat(practise.start(tern, Concept.LATERAL_SIDE, "Practice").id()).isNotEqualTo(own.id());
    assertThatThrownBy(() -> practise.start(tern, Concept.REGULATORY_MARK, "Practice"))
        .isInstanceOfSatisfying(
            Refused.class, each -> assertThat(each.reason()).isEqualTo(Reason.NOTHING_TO_DRILL));
  }

  private void swap(Assignment drill, int count) {
    for (int i = 0; i < count; i++) {
      IssuedItem next = school.next(tern, drill);
      school.answer(tern, next, next.item().led(REGION_SWAPPED).orElse(next.item().key()));
      school.clock().pass(Duration.ofSeconds(9));
    }
  }
}
