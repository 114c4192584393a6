package withy.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Difficulty;
import withy.core.item.Form;
import withy.core.mark.Practice;
import withy.core.response.DrillSet;
import withy.core.scenario.TimeOfDay;
import withy.usecase.DrillSetFiles;
import withy.usecase.DrillSetProblem;
import withy.usecase.UnfitDrillSet;

class DrillSetWriterTest {
  private static final String WATER = new WaterReader().authored().get(0).text();

  private final DrillSetFiles files = new DrillSetCatalogue();

  private static SurveyedWater water(String title) throws Exception {
    return new WaterReader().read("our-own", title, WATER).water();
  }

  @Test
  void writesAFieldALineAndNothingThatLeavesAllOpen() {
    Composition composition =
        new Composition(
            List.of(Concept.REGION, Concept.LATERAL_SIDE),
            List.of(Form.IDENTIFY),
            TimeOfDay.NIGHT,
            12);
    assertThat(files.write(new DrillSet("In “by night”", composition), null))
        .isEqualTo(
            """
            {
              "title": "In “by night”",
              "concepts": ["region","lateral-side"],
              "forms": ["identify"],
              "time": "night",
              "length": 12
            }
            """);
    Composition all = new Composition(List.of(), List.of(), null, 1);
    assertThat(files.write(new DrillSet("All", all), null))
        .isEqualTo("{\n  \"title\": \"All\",\n  \"length\": 1\n}\n");
  }

  /** Whoever adds to what a composition holds adds to its file too. */
  @Test
  void hasAFieldForAllThatACompositionHolds() throws Exception {
    List<String> held =
        Stream.of(Composition.class.getRecordComponents()).map(RecordComponent::getName).toList();
    assertThat(DrillSetReader.FIELDS).containsAll(held);
    DrillSet whole =
        new DrillSet(
            "Whole",
            new Composition(
                List.of(Concept.PASSAGE),
                List.of(Form.PASSAGE),
                TimeOfDay.DAY,
                6,
                water("Ours"),
                Practice.USA,
                Difficulty.HARDER));
    String file = files.write(whole, WATER);
    for (String each : DrillSetReader.FIELDS) {
      assertThat(file).contains("\"" + each + "\": ");
    }
    Composition back = files.read(file).set().composition();
    assertThat(back.practice()).isEqualTo(Practice.USA);
    assertThat(back.difficulty()).isEqualTo(Difficulty.HARDER);
  }

  @ParameterizedTest
  @MethodSource("authored")
  void authoredSetsComeBackAsTheyWere(Path file) throws Exception {
    DrillSet set = DrillSetReader.read("set", Files.readString(file));
    String written = files.write(set, null);
    DrillSetFiles.Read again = files.read(written);
    assertThat(again.set()).isEqualTo(set);
    assertThat(again.water()).isNull();
    assertThat(files.write(again.set(), null)).isEqualTo(written);
  }

  static List<Path> authored() throws IOException {
    return DrillSetReaderTest.authored();
  }

  @Test
  void aWaterThatLiesInTheFileComesBackDigitByDigit() throws Exception {
    Composition composition =
        new Composition(List.of(Concept.LATERAL_SIDE), List.of(), null, 9, water("Our estuary"));
    String odd = WATER.replaceFirst("\"width\": 104", "\"width\": 104.50");
    assertThat(odd).isNotEqualTo(WATER);
    String written = files.write(new DrillSet("Ours", composition), odd);
    assertThat(written).contains("\"title\":\"Our estuary\"", "104.50");
    DrillSetFiles.Read read = files.read(written);
    SurveyedWater came = read.set().composition().water();
    assertThat(came.title()).isEqualTo("Our estuary");
    assertThat(came.marks()).isEqualTo(water("Our estuary").marks());
    assertThat(files.write(read.set(), read.water())).isEqualTo(written);
  }

  @Test
  void problemsOfTheWaterStandByTheirPlaceInTheFileOfTheSet() throws Exception {
    Composition composition = new Composition(List.of(), List.of(), null, 9, water("Our estuary"));
    String unfit =
        files
            .write(new DrillSet("Ours", composition), WATER)
            .replace("\"width\":104", "\"width\":\"wide\"")
            .replace("\"length\": 9", "\"length\": 0");
    assertThatThrownBy(() -> files.read(unfit))
        .isInstanceOfSatisfying(
            UnfitDrillSet.class,
            e ->
                assertThat(e.problems())
                    .extracting(DrillSetProblem::place)
                    .contains("length", "water.features[30].properties.width"));
  }

  @Test
  void theCommandLineTakesAWaterThatLiesInTheFileToo() throws Exception {
    Composition composition = new Composition(List.of(), List.of(), null, 9, water("Our estuary"));
    String file = files.write(new DrillSet("Ours", composition), WATER);
    assertThat(DrillSetReader.read("set.json", file).composition().water().title())
        .isEqualTo("Our estuary");
  }
}
