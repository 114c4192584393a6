package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.catalogue.WaterReader;
import withy.core.Chance;
import withy.core.geometry.Position;
import withy.core.hydrography.Blueprint;
import withy.core.hydrography.DrawnWaters;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.response.DrillKind;
import withy.core.waterway.Voyage;
import withy.store.MemoryStore;
import withy.store.Store;

class RehearsalTest {
  private static final long SEED = 4;
  private static final SurveyedWater RIVER =
      DrawnWaters.find(DrawnWaters.id(Blueprint.RIVER, 3)).orElseThrow();

  private static final SurveyedWater HOME = new WaterReader().authored().get(0).water();

  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports(new WaterReader()));

  @AfterEach
  void close() {
    store.close();
  }

  private static Composition in(SurveyedWater water) {
    return Rehearsals.drawnFrom(new Composition(List.of(), List.of(), null, 12).in(water));
  }

  private static List<Item> items(Practice practice) {
    return new Rehearsals(ItemGenerator::item).of(practice, in(RIVER), SEED);
  }

  private static Position mark(Item item) {
    return item.scenario().sailing().marks().get(0).position();
  }

  /** Where the voyage has its marks abeam, as the wall calls them. */
  private static List<Position> called(Practice practice, boolean inbound) {
    return Voyage.of(RIVER.marked(practice, Chance.of(SEED, 0)), practice, "", inbound)
        .calls()
        .stream()
        .map(each -> each.mark().position())
        .toList();
  }

  @Test
  void asksTheMarksInTheOrderInWhichTheyComeAbeamInAndOutAgain() {
    for (Practice practice : List.of(Practice.IALA_A, Practice.IALA_B)) {
      for (Travel travel : List.of(Travel.WITH, Travel.AGAINST)) {
        List<Position> asked = new ArrayList<>();
        for (Item each : items(practice)) {
          if (each.form() != Form.PASSAGE && each.scenario().situation().travel() == travel) {
            asked.add(mark(each));
          }
        }
        List<Position> order = new ArrayList<>(called(practice, travel == Travel.WITH));
        order.retainAll(asked);
        assertThat(asked).containsExactlyElementsOf(order);
        assertThat(asked)
            .as("every mark of which the side can be asked")
            .containsAll(
                ItemGenerator.askedSides(RIVER, practice, travel).stream()
                    .filter(called(practice, travel == Travel.WITH)::contains)
                    .toList());
      }
    }
  }

  @Test
  void comesInFirstAndEndsWithTheWholePassage() {
    List<Item> items = items(Practice.IALA_A);
    List<Travel> travels =
        items.stream()
            .filter(each -> each.form() != Form.PASSAGE)
            .map(each -> each.scenario().situation().travel())
            .toList();
    assertThat(travels).isNotEmpty().contains(Travel.WITH, Travel.AGAINST);
    assertThat(travels.lastIndexOf(Travel.WITH)).isLessThan(travels.indexOf(Travel.AGAINST));
    List<Form> forms = items.stream().map(Item::form).toList();
    assertThat(forms.get(forms.size() - 1)).isEqualTo(Form.PASSAGE);
    assertThat(forms.subList(0, travels.size())).doesNotContain(Form.PASSAGE);
  }

  @Test
  void isTheSameForEverybodyAndAsLongAsItsPassage() {
    SchoolClass tuesday = school.schoolClass();
    LearnerCaller tern = school.learner(tuesday, "Tern");
    LearnerCaller skua = school.learner(tuesday, "Skua");
    Composition composition = new Composition(List.of(), List.of(), null, 12).in(HOME);
    Assignment drill = assign(tuesday, composition);
    List<Item> items =
        new Rehearsals(ItemGenerator::item)
            .of(Practice.IALA_A, drill.composition(), drill.terms().seed());
    assertThat(drill.composition().length()).isEqualTo(items.size());
    for (Item each : items.subList(0, 3)) {
      IssuedItem asked = school.next(tern, drill);
      assertThat(asked.item()).isEqualTo(each);
      school.answer(tern, asked, asked.item().key());
    }
    assertThat(school.next(skua, drill).item()).isEqualTo(items.get(0));
  }

  private Assignment assign(SchoolClass schoolClass, Composition composition) {
    return school
        .cases
        .assignDrill()
        .assign(
            school.instructor(),
            schoolClass.id(),
            "Up the river",
            composition,
            null,
            new AssignDrill.Wanted(DrillKind.REHEARSAL, null, List.of()));
  }

  @Test
  void refusesWhereThereIsNoPassage() {
    SchoolClass tuesday = school.schoolClass();
    Composition nowhere = new Composition(List.of(), List.of(), null, 12);
    Refusals.assertRefused(Reason.NO_PASSAGE, () -> assign(tuesday, nowhere));
    Composition alone = new Composition(List.of(), List.of(Form.IDENTIFY), null, 12);
    Refusals.assertRefused(Reason.NO_PASSAGE, () -> assign(tuesday, alone));
  }
}
