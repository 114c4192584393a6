package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.core.item.Misconception.DIRECTION_IGNORED;
import static withy.core.item.Misconception.REGION_SWAPPED;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.item.Concept;
import withy.core.item.Item;
import withy.core.item.Misconception;
import withy.store.MemoryStore;
import withy.store.Store;

class LikelyBeliefTest {
  private final Store store = MemoryStore.create();

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void isTheOneThatMostAnswersNamedAndAmongEqualsTheLast() {
    assertThat(LikelyBelief.of(List.of()).belief()).isNull();
    assertThat(LikelyBelief.of(List.of("region-swapped")).belief()).isEqualTo(REGION_SWAPPED);
    assertThat(LikelyBelief.of(List.of("region-swapped", "direction-ignored")).belief())
        .isEqualTo(DIRECTION_IGNORED);
    assertThat(
            LikelyBelief.of(List.of("region-swapped", "direction-ignored", "region-swapped"))
                .belief())
        .isEqualTo(REGION_SWAPPED);
  }

  /** Both beliefs lead to the same side outbound; without a rule every second option would err. */
  @Test
  void isNamedByEveryOptionToWhichItLeadsOnceItWasShown() {
    School school = School.over(store.ports(), 5);
    SchoolClass tuesday = school.schoolClass();
    LearnerCaller tern = school.learner(tuesday, "Tern");
    Assignment drill = school.assignment(tuesday, 60, Concept.LATERAL_SIDE);
    int named = 0;
    for (int i = 0; i < 60; i++) {
      IssuedItem next = school.next(tern, drill);
      Optional<Misconception> behind = behindSwappedRegions(next.item());
      behind.ifPresent(belief -> assertThat(belief).isEqualTo(REGION_SWAPPED));
      named += behind.isPresent() ? 1 : 0;
      String believed =
          REGION_SWAPPED.answer(next.item().form(), next.item().scenario()).orElse("");
      school.answer(tern, next, behind.isPresent() ? believed : next.item().key());
    }
    assertThat(named).isEqualTo(48); // all but outbound by shape, one in five
  }

  private static Optional<Misconception> behindSwappedRegions(Item item) {
    return REGION_SWAPPED
        .answer(item.form(), item.scenario())
        .flatMap(value -> Optional.ofNullable(item.option(value).misconception()));
  }

  @Test
  void isOfOneConceptAlone() {
    School school = School.over(store.ports(), 6);
    SchoolClass tuesday = school.schoolClass();
    LearnerCaller tern = school.learner(tuesday, "Tern");
    IssuedItem first = school.next(tern, school.assignment(tuesday, 1, Concept.LATERAL_SIDE));
    school.answer(tern, first, School.wrong(first));

    Responses responses = store.ports().responses();
    assertThat(responses.misconceptions(tern.id(), Concept.LATERAL_SIDE))
        .containsExactly("region-swapped");
    assertThat(responses.misconceptions(tern.id(), Concept.LATERAL_SHAPE)).isEmpty();
    assertThat(responses.misconceptions("none", Concept.LATERAL_SIDE)).isEmpty();
  }
}
