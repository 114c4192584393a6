package withy.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.catalogue.WaterReader;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.usecase.Assignment;
import withy.usecase.ImportWater;
import withy.usecase.InstructorCaller;
import withy.usecase.IssuedItem;
import withy.usecase.LearnerCaller;
import withy.usecase.ListWaters;
import withy.usecase.Ports;
import withy.usecase.Reason;
import withy.usecase.Refused;
import withy.usecase.School;
import withy.usecase.SchoolClass;
import withy.usecase.UnfitWater;

class WaterTableTest {
  private static final String FILE = new WaterReader().authored().get(0).text();

  private final Store store = MemoryStore.create();
  private final Ports ports = store.ports(new WaterReader());
  private final School school = School.over(ports);
  private final InstructorCaller marlo = school.instructor();

  @AfterEach
  void close() {
    store.close();
  }

  private SurveyedWater imported(String title) throws UnfitWater {
    return school.cases().importWater().take(marlo, title, FILE).water().water();
  }

  private Assignment assigned(SchoolClass tuesday, SurveyedWater water) {
    Composition composition = new Composition(List.of(), List.of(), null, 5, water);
    return school.cases().assignDrill().assign(marlo, tuesday.id(), "In it", composition, null);
  }

  @Test
  void keepsTheFileAsItWasSent() throws UnfitWater {
    SurveyedWater water = imported("Our estuary");
    ListWaters.Listed listed = school.cases().listWaters().one(marlo, water.id());
    assertThat(listed.text()).isEqualTo(FILE);
    assertThat(listed.water()).isEqualTo(water);
    assertThat(listed.water().title()).isEqualTo("Our estuary");
    assertThat(school.cases().listWaters().all(marlo))
        .extracting(each -> each.water().title())
        .containsExactly("The Skarrow", "Our estuary");
  }

  @Test
  void drillGoesOnWhenItsWaterIsDeleted() throws UnfitWater {
    SurveyedWater water = imported("Our estuary");
    SchoolClass tuesday = school.schoolClass();
    Assignment drill = assigned(tuesday, water);
    LearnerCaller tern = school.learner(tuesday, "Tern");
    IssuedItem open = school.next(tern, drill);
    school.cases().listWaters().remove(marlo, water.id());
    assertThatThrownBy(() -> school.cases().listWaters().one(marlo, water.id()))
        .isInstanceOfSatisfying(
            Refused.class, e -> assertThat(e.reason()).isEqualTo(Reason.UNKNOWN_WATER));
    Ports anew = store.ports(new WaterReader());
    assertThat(anew.assignments().find(drill.id())).contains(drill);
    assertThat(school.next(tern, drill)).isEqualTo(open);
    school.answerRight(tern, drill, 5);
  }

  @Test
  void drillKeepsACopyOfAWaterThatComesWithTheProgram() {
    SurveyedWater home = new WaterReader().authored().get(0).water();
    Assignment drill = assigned(school.schoolClass(), home);
    assertThat(ports.assignments().find(drill.id()).orElseThrow().composition().water())
        .isEqualTo(home);
  }

  @Test
  void waterThatNoDrillNeedsIsForgottenWhole() throws UnfitWater {
    SurveyedWater water = imported("Our estuary");
    school.cases().listWaters().remove(marlo, water.id());
    assertThat(ports.waters().find(water.id())).isEmpty();
    assertThat(imported("Our estuary").title()).isEqualTo("Our estuary");
  }

  @Test
  void oneInstructorHasSoManyWatersAndNoMore() throws UnfitWater {
    for (int i = 0; i < ImportWater.MOST; i++) {
      imported("Water " + i);
    }
    assertThatThrownBy(() -> imported("One more"))
        .isInstanceOfSatisfying(
            Refused.class, e -> assertThat(e.reason()).isEqualTo(Reason.TOO_MANY_WATERS));
  }
}
