package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static withy.usecase.Refusals.assertRefused;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.catalogue.DrillSetCatalogue;
import withy.catalogue.WaterReader;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.store.MemoryStore;
import withy.store.Store;

class KeepDrillSetTest {
  private static final String WATER = new WaterReader().authored().get(0).text();
  private static final Composition SHORT =
      new Composition(List.of(Concept.REGION), List.of(), null, 4);

  private final Store store = MemoryStore.create();
  private final School school =
      School.over(store.ports(new WaterReader(), new DrillSetCatalogue()));
  private final KeepDrillSet keep = school.cases.keepDrillSet();
  private final InstructorCaller marlo = school.instructor();
  private final InstructorCaller stranger = new InstructorCaller("f".repeat(32), "Stranger");

  @AfterEach
  void close() {
    store.close();
  }

  private KeptDrillSet taken(String file) throws UnfitDrillSet {
    return school.cases.importDrillSet().take(marlo, file);
  }

  private List<KeptWater> waters() {
    return school.ports.waters().of(marlo.id());
  }

  @Test
  void listsOnesOwnNewestFirstThenThoseOfTheProgram() {
    keep.keep(marlo, "Earlier", SHORT);
    school.clock.pass(java.time.Duration.ofMinutes(1));
    keep.keep(marlo, "Later", SHORT);
    assertThat(keep.all(marlo))
        .extracting(each -> each.set().title())
        .startsWith("Later", "Earlier", "First evening: in from the sea by day");
  }

  @Test
  void nobodyElseSeesChangesOrDeletesWhatIsNotShared() {
    KeptDrillSet mine = keep.keep(marlo, "Mine", SHORT);
    assertThat(keep.find(stranger, mine.id())).isEmpty();
    assertThat(keep.all(stranger)).extracting(KeepDrillSet.Listed::id).doesNotContain(mine.id());
    assertRefused(Reason.NO_DRILL_SET, () -> keep.file(stranger, mine.id()));
    assertRefused(Reason.NO_DRILL_SET, () -> keep.copy(stranger, mine.id(), "Stolen"));
    assertRefused(Reason.NO_DRILL_SET, () -> keep.rename(stranger, mine.id(), "Renamed"));
    assertRefused(Reason.NO_DRILL_SET, () -> keep.remove(stranger, mine.id()));
    assertThat(keep.one(marlo, mine.id()).set().title()).isEqualTo("Mine");
  }

  @Test
  void thoseOfTheProgramAreCopiedNotChanged() {
    KeptDrillSet copy = keep.copy(marlo, "by-night", "Our nights");
    assertThat(copy.set().composition()).isEqualTo(keep.one(marlo, "by-night").set().composition());
    assertRefused(Reason.NO_DRILL_SET, () -> keep.rename(marlo, "by-night", "Ours"));
    assertRefused(Reason.NO_DRILL_SET, () -> keep.remove(marlo, "by-night"));
  }

  @Test
  void exportedAndImportedItIsExportedAgainByteForByte() throws Exception {
    SurveyedWater water =
        school.cases.importWater().take(marlo, "Our estuary", WATER).water().water();
    KeptDrillSet kept = keep.keep(marlo, "Ours", SHORT.in(water));
    String first = keep.file(marlo, kept.id());
    KeptDrillSet again = taken(first);
    assertThat(keep.file(marlo, again.id())).isEqualTo(first);
    assertThat(waters()).as("the same water is not taken in twice").hasSize(1);
    school.cases.listWaters().remove(marlo, water.id());
    keep.remove(marlo, kept.id());
    keep.remove(marlo, again.id());
    KeptDrillSet anew = taken(first);
    assertThat(waters()).extracting(KeptWater::title).containsExactly("Our estuary");
    assertThat(keep.file(marlo, anew.id())).isEqualTo(first);
  }

  @Test
  void aWaterOfTheProgramIsNamedInTheFile() throws UnfitDrillSet {
    String file = keep.file(marlo, "the-skarrow");
    assertThat(file).contains("\"water\": \"home-water\"");
    KeptDrillSet taken = taken(file);
    assertThat(keep.file(marlo, taken.id())).isEqualTo(file);
    assertThat(waters()).isEmpty();
  }

  @Test
  void nothingIsTakenOfAFileThatIsUnfit() throws Exception {
    SurveyedWater water =
        school.cases.importWater().take(marlo, "Our estuary", WATER).water().water();
    String file = keep.file(marlo, keep.keep(marlo, "Ours", SHORT.in(water)).id());
    String otherWater = file.replace("\"width\":104", "\"width\":110");
    String unfit =
        otherWater.replace("\"title\": \"Ours\"", "\"title\": \"" + "x".repeat(61) + '"');
    assertThatThrownBy(() -> taken(unfit))
        .isInstanceOfSatisfying(
            UnfitDrillSet.class,
            e ->
                assertThat(e.problems())
                    .extracting(DrillSetProblem::place)
                    .containsExactly("title"));
    assertThat(waters()).hasSize(1);
    assertThat(school.ports.drillSets().of(marlo.id())).hasSize(1);
  }

  @Test
  void oneInstructorHasSoManyAndNoMore() {
    for (int i = 0; i < KeepDrillSet.MOST; i++) {
      keep.keep(marlo, "Set " + i, SHORT);
    }
    assertRefused(Reason.TOO_MANY_DRILL_SETS, () -> keep.keep(marlo, "One more", SHORT));
    String file = keep.file(marlo, "by-night");
    assertRefused(Reason.TOO_MANY_DRILL_SETS, () -> taken(file));
  }
}
