package withy.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.catalogue.DrillSetCatalogue;
import withy.catalogue.WaterReader;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.scenario.TimeOfDay;
import withy.usecase.Assignment;
import withy.usecase.InstructorCaller;
import withy.usecase.KeepDrillSet;
import withy.usecase.KeptDrillSet;
import withy.usecase.LearnerCaller;
import withy.usecase.Ports;
import withy.usecase.School;
import withy.usecase.SchoolClass;
import withy.usecase.UnfitWater;

class DrillSetTableTest {
  private static final String FILE = new WaterReader().authored().get(0).text();

  private final Store store = MemoryStore.create();
  private final Ports ports = store.ports(new WaterReader(), new DrillSetCatalogue());
  private final School school = School.over(ports);
  private final KeepDrillSet keep = school.cases().keepDrillSet();
  private final InstructorCaller marlo = school.instructor();

  @AfterEach
  void close() {
    store.close();
  }

  private SurveyedWater imported() throws UnfitWater {
    return school.cases().importWater().take(marlo, "Our estuary", FILE).water().water();
  }

  private static Composition in(SurveyedWater water) {
    return new Composition(
        List.of(Concept.LATERAL_SIDE), List.of(Form.SIDE), TimeOfDay.DAY, 3, water);
  }

  private Assignment assigned(SchoolClass tuesday, KeptDrillSet kept) {
    return school
        .cases()
        .assignDrill()
        .assign(marlo, tuesday.id(), kept.set().title(), kept.set().composition(), null);
  }

  private KeptDrillSet anew(String id) {
    Ports again = store.ports(new WaterReader(), new DrillSetCatalogue());
    return again.drillSets().find(id).orElseThrow();
  }

  @Test
  void keepsASetWithAllThatItIsDrawnFrom() throws UnfitWater {
    KeptDrillSet kept = keep.keep(marlo, "Ours", in(imported()));
    assertThat(anew(kept.id())).isEqualTo(kept);
    assertThat(ports.drillSets().of(marlo.id())).containsExactly(kept);
    assertThat(ports.drillSets().sharedWith(marlo.id())).isEmpty();
  }

  @Test
  void renamedItIsStillTheSame() throws UnfitWater {
    KeptDrillSet kept = keep.keep(marlo, "Ours", in(imported()));
    keep.rename(marlo, kept.id(), "Theirs");
    assertThat(anew(kept.id()).set().title()).isEqualTo("Theirs");
    assertThat(anew(kept.id()).set().composition()).isEqualTo(kept.set().composition());
  }

  @Test
  void setsOutliveTheirWaterAndDrillsOutliveTheirSet() throws UnfitWater {
    SurveyedWater water = imported();
    KeptDrillSet kept = keep.keep(marlo, "Ours", in(water));
    school.cases().listWaters().remove(marlo, water.id());
    assertThat(anew(kept.id())).isEqualTo(kept);
    KeptDrillSet copy = keep.copy(marlo, kept.id(), "Copied after");
    SchoolClass tuesday = school.schoolClass();
    Assignment drill = assigned(tuesday, kept);
    keep.remove(marlo, kept.id());
    keep.remove(marlo, copy.id());
    assertThat(ports.drillSets().of(marlo.id())).isEmpty();
    LearnerCaller tern = school.learner(tuesday, "Tern");
    school.answerRight(tern, drill, 3);
    Ports again = store.ports(new WaterReader(), new DrillSetCatalogue());
    assertThat(again.assignments().find(drill.id())).contains(drill);
    assertThat(again.responses().of(tern.id(), drill.id())).hasSize(3);
  }

  @Test
  void theLastThatAsksForAWaterTakesItsFileAlong() throws UnfitWater {
    SurveyedWater water = imported();
    KeptDrillSet one = keep.keep(marlo, "One", in(water));
    KeptDrillSet two = keep.keep(marlo, "Two", in(water));
    school.cases().listWaters().remove(marlo, water.id());
    keep.remove(marlo, one.id());
    assertThat(anew(two.id())).isEqualTo(two);
    keep.remove(marlo, two.id());
    assertThatThrownBy(() -> keep.keep(marlo, "Three", in(water)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("is not kept");
  }
}
