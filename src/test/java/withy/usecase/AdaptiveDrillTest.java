package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.core.item.Misconception.REGION_SWAPPED;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.item.Concept;
import withy.core.measurement.LearnerSums;
import withy.store.MemoryStore;
import withy.store.Store;

class AdaptiveDrillTest {
  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports(), 5);
  private final SchoolClass tuesday = school.schoolClass();

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void leavesTwoItemsBetweenThoseOfOneConceptAndMeetsEveryConcept() {
    LearnerCaller tern = school.learner(tuesday, "Tern");
    List<Concept> asked = asked(tern, 24, false);
    assertThat(asked.subList(0, 6)).containsAll(List.of(drilled()));
    for (int i = 2; i < asked.size(); i++) {
      assertThat(asked.subList(i - 2, i)).doesNotContain(asked.get(i));
    }
  }

  @Test
  void asksMoreAboutWhatIsNotSettled() {
    List<Concept> knowing = asked(school.learner(tuesday, "Knot"), 24, false);
    List<Concept> swapping = asked(school.learner(tuesday, "Tern"), 24, true);
    int even = Collections.frequency(knowing, Concept.LATERAL_SIDE);
    assertThat(even).isBetween(3, 9);
    assertThat(swapping.subList(0, 8)).contains(Concept.LATERAL_SIDE);
  }

  @Test
  void showsWhatIsHeldAsSoonAsAnswersDo() {
    LearnerCaller tern = school.learner(tuesday, "Tern");
    asked(tern, 16, true);
    LearnerSums sums = store.ports().responses().sumsOf(tern.id()).orElseThrow();
    Diagnoses diagnoses = new Diagnoses(store.ports().responses());
    assertThat(diagnoses.of(sums, Concept.LATERAL_SIDE).likelyBelief()).isEqualTo("region-swapped");
    assertThat(diagnoses.of(sums, Concept.SAFE_WATER).knows()).isGreaterThan(0.9);
    assertThat(diagnoses.of(sums, Concept.LATERAL_SHAPE).answers()).isZero();
  }

  private static Concept[] drilled() {
    return new Concept[] {
      Concept.LATERAL_SIDE, Concept.CARDINAL_IDENTITY, Concept.SAFE_WATER, Concept.ISOLATED_DANGER
    };
  }

  private List<Concept> asked(LearnerCaller learner, int items, boolean swaps) {
    Assignment drill = school.assignment(tuesday, items, drilled());
    List<Concept> asked = new ArrayList<>();
    for (int i = 0; i < items; i++) {
      IssuedItem next = school.next(learner, drill);
      asked.add(next.item().measures());
      String believed =
          swaps ? next.item().led(REGION_SWAPPED).orElse(next.item().key()) : next.item().key();
      school.answer(learner, next, believed);
    }
    return asked;
  }
}
