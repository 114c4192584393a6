package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Difficulty;
import withy.core.item.Item;
import withy.core.mark.Practice;
import withy.core.response.DrillKind;
import withy.core.response.Response;
import withy.store.MemoryStore;
import withy.store.Store;

class ComposedDrillTest {
  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports(), 12);
  private final InstructorCaller marlo = school.instructor();
  private final SchoolClass tuesday = school.schoolClass();

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void asksUnderThePracticeOfTheDrillAndAsHardAsAskedFor() {
    Composition composition =
        new Composition(List.of(Concept.LATERAL_SIDE, Concept.REGULATORY_MARK), List.of(), null, 4)
            .under(Practice.CANADA)
            .graded(Difficulty.MIDDLE);
    LearnerCaller avocet = school.learner(tuesday, "Avocet");
    for (DrillKind kind : List.of(DrillKind.ADAPTIVE, DrillKind.FIXED, DrillKind.READINESS)) {
      Assignment drill = assign(kind, composition);
      for (int i = 0; i < 3; i++) {
        IssuedItem issued = school.next(avocet, drill);
        Item item = issued.item();
        assertThat(tuesday.practice()).isNotEqualTo(Practice.CANADA);
        assertThat(item.scenario().practice()).isEqualTo(Practice.CANADA);
        assertThat(Difficulty.of(item)).isEqualTo(Difficulty.MIDDLE);
        assertThat(school.next(avocet, drill).item()).isEqualTo(item);
        school.answerRight(avocet, drill, 1);
      }
    }
    assertThat(school.cases().reviewClass().responses(marlo, tuesday.id()))
        .hasSize(9)
        .extracting(Response::practice)
        .containsOnly("canada");
  }

  @Test
  void keepsThePracticeAndTheDifficultyOfADrill() {
    Composition composition =
        new Composition(List.of(), List.of(), null, 4)
            .under(Practice.USA)
            .graded(Difficulty.HARDER);
    Assignment drill = assign(DrillKind.FIXED, composition);
    assertThat(store.ports().assignments().find(drill.id()).orElseThrow().composition())
        .isEqualTo(composition);
  }

  @Test
  void refusesADrillOfWhichNothingIsAsHard() {
    Composition composition =
        new Composition(List.of(Concept.CARDINAL_LIGHT), List.of(), null, 4)
            .graded(Difficulty.EASIER);
    assertThatThrownBy(() -> assign(DrillKind.ADAPTIVE, composition))
        .isInstanceOfSatisfying(
            Refused.class,
            refused -> assertThat(refused.reason()).isEqualTo(Reason.NOTHING_TO_DRILL));
  }

  private Assignment assign(DrillKind kind, Composition composition) {
    return school
        .cases()
        .assignDrill()
        .assign(
            marlo,
            tuesday.id(),
            "Abroad",
            composition,
            null,
            new AssignDrill.Wanted(kind, null, List.of()));
  }
}
