package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.usecase.Refusals.assertRefused;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.item.Concept;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.store.MemoryStore;
import withy.store.Store;

class NextItemTest {
  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports());
  private final SchoolClass tuesday = school.schoolClass();
  private final LearnerCaller tern = school.learner(tuesday, "Tern");

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void givesTheSameItemUntilItIsAnswered() {
    Assignment drill = school.assignment(tuesday, 3);

    IssuedItem first = school.next(tern, drill);
    for (int i = 0; i < 10; i++) {
      assertThat(school.next(tern, drill)).isEqualTo(first);
    }
    school.answer(tern, first, first.item().key());

    assertThat(school.next(tern, drill).id()).isNotEqualTo(first.id());
    assertThat(school.next(tern, drill).position()).isEqualTo(1);
  }

  @Test
  void isDoneAfterAsManyItemsAsTheDrillIsLong() {
    Assignment drill = school.assignment(tuesday, 3);

    school.answerRight(tern, drill, 3);

    assertThat(school.cases.nextItem().next(tern, drill.id())).isEmpty();
    assertThat(school.cases.listAssignments().of(tern))
        .singleElement()
        .satisfies(own -> assertThat(own.answered()).isEqualTo(own.length()).isEqualTo(3));
  }

  @Test
  void meetsEveryConceptOnceARoundInAnOrderOfTheLearnersOwn() {
    Assignment drill = school.assignment(tuesday, 200);
    List<Concept> all = ItemGenerator.measurable(Practice.IALA_A, drill.composition());
    ConceptPlan terns = ConceptPlan.of(Practice.IALA_A, drill, tern.id());
    ConceptPlan others =
        ConceptPlan.of(Practice.IALA_A, drill, school.learner(tuesday, "Skua").id());

    for (int round = 0; round < 10; round++) {
      assertThat(round(terns, round, all.size())).containsExactlyInAnyOrderElementsOf(all);
    }
    assertThat(round(terns, 0, all.size())).isNotEqualTo(round(terns, 1, all.size()));
    assertThat(rounds(terns, all.size())).isNotEqualTo(rounds(others, all.size()));
  }

  private static List<Concept> round(ConceptPlan plan, int round, int size) {
    return IntStream.range(round * size, (round + 1) * size).mapToObj(plan::at).toList();
  }

  private static List<Concept> rounds(ConceptPlan plan, int size) {
    return IntStream.range(0, 4 * size).mapToObj(plan::at).toList();
  }

  @Test
  void asksWhatThePlanSays() {
    Assignment drill =
        school.assignment(tuesday, 4, Concept.LATERAL_SIDE, Concept.CARDINAL_IDENTITY);
    List<Concept> asked = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      IssuedItem next = school.next(tern, drill);
      asked.add(next.item().measures());
      school.answer(tern, next, next.item().key());
    }

    assertThat(asked.subList(0, 2))
        .containsExactlyInAnyOrder(Concept.LATERAL_SIDE, Concept.CARDINAL_IDENTITY);
    assertThat(asked.subList(2, 4))
        .containsExactlyInAnyOrder(Concept.LATERAL_SIDE, Concept.CARDINAL_IDENTITY);
  }

  @Test
  void replacesAnUnansweredItemOfAnotherGenerator() {
    Assignment drill = school.assignment(tuesday, 3);
    Issue outdated = Outdated.issue(school, tern, drill);

    IssuedItem next = school.next(tern, drill);

    assertThat(next.id()).isNotEqualTo(outdated.id());
    assertThat(next.position()).isEqualTo(outdated.position());
    assertThat(next.item().measures()).isEqualTo(outdated.concept());
    assertThat(store.ports().issuedItems().find(outdated.id())).isEmpty();
    assertThat(school.next(tern, drill)).isEqualTo(next);
  }

  @Test
  void givesParallelCallsTheSameItem() throws Exception {
    Assignment drill = school.assignment(tuesday, 3);

    List<IssuedItem> items = AtOnce.call(20, () -> school.next(tern, drill));

    assertThat(items).containsOnly(items.get(0));
  }

  @Test
  void hidesWhichOptionIsWhichBehindTokensThatNeverRepeat() {
    Assignment drill = school.assignment(tuesday, 20, Concept.LATERAL_SIDE);
    LearnerCaller skua = school.learner(tuesday, "Skua");
    List<String> tokens = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      for (LearnerCaller each : List.of(tern, skua)) {
        IssuedItem next = school.next(each, drill);
        next.options().forEach(option -> tokens.add(option.token()));
        school.answer(each, next, next.item().key());
      }
    }

    assertThat(tokens).doesNotHaveDuplicates().noneMatch(token -> token.contains("leave"));
  }

  @Test
  void drawsUnlikeItemsForNeighbours() {
    Assignment drill = school.assignment(tuesday, 5);
    LearnerCaller skua = school.learner(tuesday, "Skua");

    assertThat(school.next(tern, drill).item().seed())
        .isNotEqualTo(school.next(skua, drill).item().seed());
  }

  @Test
  void knowsNoAssignmentOfAnotherClass() {
    Assignment drill = school.assignment(tuesday, 3);
    LearnerCaller stranger = school.learner(school.schoolClass(), "Tern");

    assertRefused(
        Reason.UNKNOWN_ASSIGNMENT, () -> school.cases.nextItem().next(stranger, drill.id()));
    assertRefused(Reason.UNKNOWN_ASSIGNMENT, () -> school.cases.nextItem().next(tern, "none"));
  }
}
