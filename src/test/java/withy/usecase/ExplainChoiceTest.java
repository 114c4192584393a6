package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static withy.core.item.Misconception.REGION_SWAPPED;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.drill.Grounds;
import withy.core.drill.Grounds.Kind;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.response.DrillKind;
import withy.store.MemoryStore;
import withy.store.Store;

class ExplainChoiceTest {
  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports(), 8);
  private final SchoolClass tuesday = school.schoolClass();
  private final ExplainChoice explain = school.cases().explainChoice();
  private final LearnerCaller tern = school.learner(tuesday, "Tern");

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void saysNothingBeforeTheItemIsAnswered() {
    Assignment drill = school.assignment(tuesday, 3, Concept.SAFE_WATER);
    IssuedItem item = school.next(tern, drill);
    assertThatThrownBy(() -> explain.asked(tern, item.id()))
        .isInstanceOfSatisfying(
            Refused.class, each -> assertThat(each.reason()).isEqualTo(Reason.NOT_ANSWERED));
    LearnerCaller skua = school.learner(tuesday, "Skua");
    assertThatThrownBy(() -> explain.asked(skua, item.id()))
        .isInstanceOfSatisfying(
            Refused.class, each -> assertThat(each.reason()).isEqualTo(Reason.UNKNOWN_ITEM));
  }

  @Test
  void countsTheAnswersBeforeTheItemAndNoneAfterIt() {
    Assignment drill = school.assignment(tuesday, 5, Concept.SAFE_WATER);
    List<String> items = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      items.add(answer(drill, i % 2 == 0));
    }
    assertThat(grounds(items.get(0))).isEqualTo(safeWater(Kind.FIRST, 0, 0));
    assertThat(grounds(items.get(1))).isEqualTo(safeWater(Kind.RIGHT_SO_FAR, 1, 1));
    assertThat(grounds(items.get(2))).isEqualTo(safeWater(Kind.DISAGREEING, 2, 1));
    assertThat(grounds(items.get(3))).isEqualTo(safeWater(Kind.DISAGREEING, 3, 2));
  }

  @Test
  void countsAnswersInOtherDrillsAndOfNobodyElse() {
    answer(school.assignment(tuesday, 1, Concept.SAFE_WATER), false);
    answer(school.assignment(tuesday, 1, Concept.ISOLATED_DANGER), true);
    LearnerCaller skua = school.learner(tuesday, "Skua");
    school.answerRight(skua, school.assignment(tuesday, 2, Concept.SAFE_WATER), 2);
    String item = answer(school.assignment(tuesday, 1, Concept.SAFE_WATER), true);
    assertThat(grounds(item)).isEqualTo(safeWater(Kind.WRONG_SO_FAR, 1, 0));
  }

  @Test
  void saysWhatIsNotKnownAndWhatIsKeptUp() {
    Assignment sides = school.assignment(tuesday, 14, Concept.LATERAL_SIDE);
    String last = "";
    for (int i = 0; i < 14; i++) {
      IssuedItem next = school.next(tern, sides);
      String believed = next.item().led(REGION_SWAPPED).orElse(School.wrong(next));
      school.answer(tern, next, believed);
      school.clock().pass(Duration.ofSeconds(9));
      last = next.id();
    }
    assertThat(grounds(last).kind()).isIn(Kind.UNKNOWN, Kind.BELIEF);
    assertThat(grounds(last).wrong()).isEqualTo(13);
    Assignment water = school.assignment(tuesday, 9, Concept.SAFE_WATER);
    for (int i = 0; i < 9; i++) {
      last = answer(water, true);
    }
    assertThat(grounds(last)).isEqualTo(safeWater(Kind.KEPT_UP, 8, 8));
  }

  @Test
  void hasNoGroundsWhereEverybodyIsAskedAlike() {
    Composition two = new Composition(List.of(Concept.SAFE_WATER), List.of(), null, 2);
    for (DrillKind kind : List.of(DrillKind.FIXED, DrillKind.READINESS)) {
      AssignDrill.Wanted wanted = new AssignDrill.Wanted(kind, null, List.of());
      Assignment drill =
          school
              .cases()
              .assignDrill()
              .assign(school.instructor(), tuesday.id(), "", two, null, wanted);
      assertThat(explain.asked(tern, answer(drill, true))).isEmpty();
    }
  }

  @Test
  void saysWhatTheOpenDrillAsksNext() {
    assertThat(next()).isEmpty();
    Assignment drill = school.assignment(tuesday, 3, Concept.SAFE_WATER, Concept.ISOLATED_DANGER);
    answer(drill, true);
    ExplainChoice.Next foretold = next().orElseThrow();
    assertThat(foretold.drill()).isEqualTo(drill);
    assertThat(foretold.grounds().kind()).isEqualTo(Kind.FIRST);
    IssuedItem item = school.next(tern, drill);
    assertThat(item.item().measures().id()).isEqualTo(foretold.grounds().concept());
    assertThat(next()).contains(foretold);
  }

  @Test
  void saysWhatADrillOnAllThatWasMetWouldAskOnceNoneIsOpen() {
    school.answerRight(tern, school.assignment(tuesday, 8, Concept.ISOLATED_DANGER), 8);
    Assignment drill = school.assignment(tuesday, 3, Concept.SAFE_WATER);
    answer(drill, true);
    answer(drill, false);
    answer(drill, true);
    ExplainChoice.Next next = next().orElseThrow();
    assertThat(next.drill()).isNull();
    assertThat(next.grounds()).isEqualTo(safeWater(Kind.DISAGREEING, 3, 2));
  }

  private Optional<ExplainChoice.Next> next() {
    return explain.next(school.instructor(), tuesday.id(), tern.id());
  }

  private static Grounds safeWater(Kind kind, int answers, int right) {
    return new Grounds(Concept.SAFE_WATER.id(), kind, answers, right);
  }

  private Grounds grounds(String item) {
    return explain.asked(tern, item).orElseThrow();
  }

  private String answer(Assignment drill, boolean right) {
    IssuedItem next = school.next(tern, drill);
    String wrong = right ? next.item().key() : School.wrong(next);
    school
        .cases()
        .answerItem()
        .answer(tern, UUID.randomUUID(), next.id(), School.given(next, wrong), 9_000);
    school.clock().pass(Duration.ofSeconds(9));
    return next.id();
  }
}
