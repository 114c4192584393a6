package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import withy.core.item.Concept;
import withy.core.item.Item;
import withy.store.MemoryStore;
import withy.store.Store;
import withy.usecase.Evidence.Led;

class TellingTest {
  @Test
  void putsFirstWhatLedMostLearnersAstrayAndThenAnotherSituation() {
    List<Led> latest =
        List.of(
            new Led("newest", "Tern", "side", "port", 1, 0),
            new Led("b", "Skua", "side", "port", 2, 0),
            new Led("c", "Tern", "side", "port", 2, 0),
            new Led("d", "Tern", "side", "port", 2, 0),
            new Led("e", "Tern", "side", "starboard", 3, 0));

    assertThat(Telling.ranked(latest))
        .extracting(Telling.Found::item, Telling.Found::learners)
        .containsExactly(tuple("b", 2), tuple("e", 1), tuple("newest", 1));
  }

  @Test
  void drawsTheItemsOfTheClassAgain() {
    try (Store store = MemoryStore.create()) {
      School school = School.over(store.ports(), 5);
      SchoolClass tuesday = school.schoolClass();
      LearnerCaller tern = school.learner(tuesday, "Tern");
      Assignment drill = school.assignment(tuesday, 12, Concept.LATERAL_SIDE);
      Item last = null;
      String belief = null;
      for (int i = 0; i < 12; i++) {
        school.clock().pass(Duration.ofSeconds(1));
        IssuedItem next = school.next(tern, drill);
        AnswerItem.Answered answered = school.answer(tern, next, School.wrong(next));
        belief = answered.feedback().misconception().id();
        last = next.item();
      }

      List<Telling> telling =
          school
              .cases
              .showEvidence()
              .telling(school.instructor(), tuesday.id(), Concept.LATERAL_SIDE.id(), belief, 3);

      assertThat(telling).isNotEmpty().hasSizeLessThanOrEqualTo(3);
      assertThat(telling.get(0).item()).isEqualTo(last);
      assertThat(telling).extracting(Telling::learners).containsOnly(1);
    }
  }
}
