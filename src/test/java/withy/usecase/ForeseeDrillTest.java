package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Difficulty;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.mark.Practice;
import withy.core.response.DrillKind;
import withy.store.MemoryStore;
import withy.store.Store;
import withy.usecase.ForeseeDrill.Count;
import withy.usecase.ForeseeDrill.Foreseen;

class ForeseeDrillTest {
  private static final Composition SUBJECT =
      new Composition(
          List.of(Concept.LATERAL_SIDE, Concept.CARDINAL_IDENTITY, Concept.SAFE_WATER),
          List.of(),
          null,
          10);

  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports(), 13);

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void countsTheVeryItemsOfAFixedDrill() {
    SchoolClass tuesday = school.schoolClass();
    Foreseen foreseen = foreseen(DrillKind.FIXED, 77);
    Assignment drill =
        school
            .cases()
            .assignDrill()
            .assign(
                school.instructor(),
                tuesday.id(),
                "Together",
                SUBJECT,
                null,
                new AssignDrill.Wanted(DrillKind.FIXED, null, List.of(), 77L));
    Map<Form, Integer> forms = new EnumMap<>(Form.class);
    Map<Difficulty, Integer> difficulties = new EnumMap<>(Difficulty.class);
    LearnerCaller avocet = school.learner(tuesday, "Avocet");
    for (int i = 0; i < SUBJECT.length(); i++) {
      Item item = school.next(avocet, drill).item();
      forms.merge(item.form(), 1, Integer::sum);
      difficulties.merge(Difficulty.of(item), 1, Integer::sum);
      school.answerRight(avocet, drill, 1);
    }
    assertThat(foreseen.exact()).isTrue();
    assertThat(foreseen.forms())
        .allSatisfy(each -> assertThat(each.items()).isEqualTo(forms.get(each.what()).intValue()))
        .hasSameSizeAs(forms.keySet());
    assertThat(foreseen.difficulties())
        .allSatisfy(
            each -> assertThat(each.items()).isEqualTo(difficulties.get(each.what()).intValue()))
        .hasSameSizeAs(difficulties.keySet());
  }

  @Test
  void expectsEveryConceptAsOftenWhereItemsFollowTheLearner() {
    Foreseen foreseen = foreseen(DrillKind.ADAPTIVE, 1);
    assertThat(foreseen.exact()).isFalse();
    assertThat(foreseen.items()).isEqualTo(10);
    assertThat(foreseen.concepts())
        .hasSize(3)
        .allSatisfy(each -> assertThat(each.items()).isCloseTo(10.0 / 3, within(1e-9)));
    for (List<? extends Count<?>> each :
        List.of(foreseen.forms(), foreseen.times(), foreseen.places(), foreseen.difficulties())) {
      assertThat(each.stream().mapToDouble(Count::items).sum()).isCloseTo(10, within(1e-9));
    }
    assertThat(foreseen(DrillKind.ADAPTIVE, 2)).isEqualTo(foreseen);
  }

  @Test
  void expectsAReadinessDrillToTakeAtMostFortyItems() {
    assertThat(foreseen(DrillKind.READINESS, 1).items()).isEqualTo(40);
  }

  private Foreseen foreseen(DrillKind kind, long seed) {
    return school.cases().foreseeDrill().of(Practice.IALA_A, SUBJECT, kind, seed);
  }
}
