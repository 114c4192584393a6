package withy.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.core.response.DrillSet;
import withy.core.scenario.TimeOfDay;

class DrillSetReaderTest {
  @Test
  void readsTheComposition() {
    DrillSet set =
        DrillSetReader.read(
            "set.json",
            "{\"title\":\"In\",\"concepts\":[\"region\"],\"forms\":[\"identify\"],"
                + "\"time\":\"day\",\"length\":12}");
    assertThat(set.title()).isEqualTo("In");
    assertThat(set.composition())
        .isEqualTo(
            new Composition(List.of(Concept.REGION), List.of(Form.IDENTIFY), TimeOfDay.DAY, 12));
  }

  @Test
  void whatIsLeftOutMeansAll() {
    assertThat(DrillSetReader.read("set.json", "{\"title\":\"In\",\"length\":1}").composition())
        .isEqualTo(new Composition(List.of(), List.of(), null, 1));
  }

  @Test
  void tellsAllProblemsAtOnceWithTheirPlaces() {
    assertThatThrownBy(
            () ->
                DrillSetReader.read(
                    "set.json",
                    "{\"concepts\":[\"region\",\"regoin\",\"region\"],\"forms\":\"side\","
                        + "\"time\":\"noon\",\"lenght\":3,\"length\":201}"))
        .isInstanceOf(InvalidDrillSet.class)
        .hasMessageStartingWith("set.json: ")
        .hasMessageContaining("lenght: is no field of a drill set")
        .hasMessageContaining("title: must be a text")
        .hasMessageContaining("concepts[1]: 'regoin' is none of")
        .hasMessageContaining("concepts[2]: 'region' stands there twice")
        .hasMessageContaining("forms: must be a list")
        .hasMessageContaining("time: 'noon' is none of day, night, both")
        .hasMessageContaining("length: must be a whole number from 1 to 200");
  }

  @Test
  void tellsWhereTheJsonBreaks() {
    assertThatThrownBy(() -> DrillSetReader.read("set.json", "{\"title\":\n oops}"))
        .isInstanceOf(InvalidDrillSet.class)
        .hasMessageStartingWith("set.json: no JSON: line 2, column ");
    assertThatThrownBy(() -> DrillSetReader.read("set.json", "[]"))
        .hasMessage("set.json: a drill set is a JSON object");
    assertThatThrownBy(() -> DrillSetReader.read("set.json", ""))
        .hasMessage("set.json: a drill set is a JSON object");
  }

  @ParameterizedTest
  @MethodSource("authored")
  void everyAuthoredSetCanBeDrilledUnderEveryPractice(Path file) throws IOException {
    DrillSet set = DrillSetReader.read(file.toString(), Files.readString(file));
    for (Practice practice : Practice.values()) {
      boolean onlyCardinals = file.endsWith("cardinal-marks.json") && practice == Practice.USA;
      assertThat(ItemGenerator.measurable(practice, set.composition()).isEmpty())
          .isEqualTo(onlyCardinals);
    }
  }

  @Test
  void packsEveryAuthoredSet() throws IOException {
    assertThat(new AuthoredDrillSets().all())
        .extracting(each -> each.id() + ".json")
        .containsExactlyInAnyOrderElementsOf(
            authored().stream().map(each -> each.getFileName().toString()).toList());
  }

  static List<Path> authored() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
      return files
          .filter(each -> each.toString().endsWith(".json"))
          .filter(each -> !each.endsWith("demo-class.json"))
          .sorted()
          .toList();
    }
  }
}
