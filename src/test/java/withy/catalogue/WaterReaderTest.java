package withy.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import withy.core.geometry.Position;
import withy.core.hydrography.SurveyedMark;
import withy.core.hydrography.SurveyedWater;
import withy.core.mark.MarkKind;
import withy.usecase.UnfitWater;
import withy.usecase.WaterFiles;
import withy.usecase.WaterProblem;
import withy.wording.Wording;

class WaterReaderTest {
  private static final WaterReader READER = new WaterReader();

  private static SurveyedWater water(WaterText text) {
    try {
      return READER.read("the-cut", null, text.toString()).water();
    } catch (UnfitWater unfit) {
      throw new AssertionError(unfit.problems().toString(), unfit);
    }
  }

  private static List<WaterProblem> problems(String text) {
    try {
      WaterFiles.Read read = READER.read("the-cut", null, text);
      return read.remarks();
    } catch (UnfitWater unfit) {
      return unfit.problems();
    }
  }

  @Test
  void readsDepthsFairwaysDangersAndMarks() {
    SurveyedWater water = water(WaterText.cut());
    assertThat(water.title()).isEqualTo("The Cut");
    assertThat(water.tide()).isEqualTo(0.4);
    assertThat(water.depths().width()).isCloseTo(1000, within(11.0));
    assertThat(water.fairways())
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.id()).isEqualTo("main");
              assertThat(each.width()).isEqualTo(100);
            });
    assertThat(water.dangers()).hasSize(1);
    SurveyedMark port = water.marks().get(0);
    assertThat(port.kind()).isEqualTo(MarkKind.PORT_HAND);
    assertThat(port.serves()).isEqualTo("main");
    assertThat(port.label()).isEqualTo("2");
    assertThat(port.position().distanceTo(new Position(446, 700))).isLessThan(1);
    assertThat(port.light()).isNotNull();
  }

  @Test
  void holdsDepthsToWhatTheFileSays() {
    SurveyedWater water = water(WaterText.cut());
    assertThat(water.depths().depth(new Position(500, 400))).isCloseTo(4.3, within(0.05));
    for (int y = 0; y <= 1600; y += 40) {
      assertThat(water.depths().depth(new Position(500, y))).isBetween(2.8, 5.0);
      assertThat(water.depths().depth(new Position(300, y))).isBetween(-1.5, 0.0);
      assertThat(water.depths().depth(new Position(960, y))).isLessThan(-2.5);
    }
  }

  static Stream<Arguments> faults() {
    return Stream.of(
        fault("", "title", "missing", t -> t.root().remove("title")),
        fault("", "tide", "number", t -> t.root().put("tide", 99)),
        fault("", "title", "text", t -> t.root().put("title", "x".repeat(201))),
        fault("", "type", "no-collection", t -> t.root().put("type", "Feature")),
        fault("", "crs", "crs", t -> t.root().putObject("crs")),
        fault("", "features", "array", t -> t.root().putArray("features")),
        fault("", "features", "extent", t -> t.coordinates(3).set(0, t.coordinates(3).get(1))),
        fault("", "features[3].type", "no-feature", t -> t.feature(3).put("type", "Point")),
        fault(
            "",
            "features[3].geometry.type",
            "geometry",
            t -> t.feature(3).putObject("geometry").put("type", "GeometryCollection")),
        fault("", "features[3].geometry.coordinates", "position", t -> t.coordinates(3).remove(1)),
        fault(
            "",
            "features[3].geometry.coordinates[0]",
            "longitude",
            t -> t.coordinates(3).removeAll().add(181).add(50)),
        fault(
            "",
            "features[3].geometry.coordinates[1]",
            "latitude",
            t -> t.coordinates(3).removeAll().add(-40).add(91)),
        fault(
            "",
            "features[0].geometry.coordinates[0]",
            "not-closed",
            t -> ((ArrayNode) t.coordinates(0).get(0)).remove(4)),
        fault("", "features[0].geometry.coordinates[0]", "crosses-itself", WaterReaderTest::bow),
        fault("", "features[2].geometry.coordinates[0]", "no-extent", WaterReaderTest::flat),
        fault(
            "",
            "features[4].geometry.coordinates[1]",
            "repeated",
            t -> t.coordinates(4).insert(0, t.coordinates(4).get(0))),
        fault(
            "",
            "features[0].properties.depthRangeMaximumValue",
            "range",
            t -> t.properties(0).put("depthRangeMaximumValue", -3)),
        fault(
            "",
            "features[3].properties.valueOfSounding",
            "missing",
            t -> t.properties(3).remove("valueOfSounding")),
        fault(
            "",
            "features[5].properties.categoryOfLateralMark",
            "code",
            t -> t.properties(5).put("categoryOfLateralMark", 7)),
        fault(
            "",
            "features[5].properties.colour",
            "colour-contradicts",
            t -> t.properties(5).putArray("colour").add(4)),
        fault(
            "",
            "features[6].properties.topmarkDaymarkShape",
            "topmark-contradicts",
            t -> t.properties(6).put("topmarkDaymarkShape", 5)),
        fault(
            "",
            "features[5].properties.lightCharacteristic",
            "light-contradicts",
            t -> t.properties(5).put("signalGroup", "(2+1)")),
        fault(
            "",
            "features[5].properties.lightCharacteristic",
            "light",
            t -> t.properties(5).put("lightCharacteristic", 12).put("signalGroup", "(7)")),
        fault(
            "",
            "features[5].properties.signalGroup",
            "signal-group",
            t -> t.properties(5).put("signalGroup", "three")),
        fault(
            "",
            "features[5].properties.serves",
            "no-fairway",
            t -> t.properties(5).put("serves", "elsewhere")),
        fault("", "features[4].id", "fairway-id", t -> t.feature(4).put("id", "Main Channel")),
        fault("", "features[7].geometry", "outside", t -> moved(t, 7, -300)),
        fault(
            "",
            "features[5].properties.categoryOfLateralMark",
            "water-contradicts",
            t -> t.properties(5).put("categoryOfLateralMark", 2).remove(List.of("colour"))),
        fault("", "features[8]", "leading-pair", t -> t.line("NavigationLine", 500, 0, 500, 900)),
        fault(
            "",
            "features[8].properties.orientationValue",
            "orientation",
            t -> t.line("NavigationLine", 500, 0, 500, 900).put("orientationValue", 90)),
        fault(
            "",
            "features[8]",
            "no-leading-line",
            t ->
                t.point("SpecialPurposeGeneralBeacon", 950, 900)
                    .put("categoryOfSpecialPurposeMark", 16)),
        fault("", "features", "no-depths", WaterReaderTest::dry),
        fault("", "features", "nothing-to-sail", t -> bare(t)),
        fault("", "features", "too-many-ranges", WaterReaderTest::ranges),
        fault("", "features[4].geometry.coordinates", "too-many-points", t -> winding(t, 401)),
        fault("", "features", "too-many-features", WaterReaderTest::manyFeatures),
        fault("", "features", "too-many-positions", WaterReaderTest::manyPositions),
        fault(
            "remark", "features[0].geometry.coordinates[0]", "clockwise", WaterReaderTest::turned),
        fault("remark", "features[1].geometry.coordinates[1]", "counter-clockwise", t -> hole(t)),
        fault(
            "remark",
            "features[3].properties.featureType",
            "unknown-feature",
            t -> t.properties(3).put("featureType", "Buoy")),
        fault(
            "remark",
            "features[5].properties.buoyShape",
            "shape",
            t -> t.properties(5).put("buoyShape", 1)),
        fault("remark", "features[5]", "serves-none", t -> moved(t, 5, -300)),
        fault("remark", "features[5]", "open-both-sides", WaterReaderTest::flooded),
        fault("remark", "features[5]", "shallow-both-sides", WaterReaderTest::silted));
  }

  private static Arguments fault(
      String remark, String place, String key, Consumer<WaterText> change) {
    return Arguments.of(remark, place, key, change);
  }

  @ParameterizedTest(name = "{1} {2}")
  @MethodSource("faults")
  void tellsWhatIsWrongAndWhere(
      String remark, String place, String key, Consumer<WaterText> change) {
    String text = WaterText.cut().with(change).toString();
    assertThat(problems(text))
        .extracting(each -> each.place() + " " + each.key())
        .contains(place + " " + key);
    if (remark.isEmpty()) {
      assertThatThrownBy(() -> READER.read("the-cut", null, text)).isInstanceOf(UnfitWater.class);
    }
  }

  @Test
  void everyProblemHasWordsAndIsTested() throws Exception {
    SortedSet<String> tested = new TreeSet<>(List.of("no-json", "not-utf-8", "too-large"));
    faults().forEach(each -> tested.add((String) each.get()[2]));
    Properties texts = new Properties();
    texts.load(WaterReaderTest.class.getResourceAsStream("/messages.properties"));
    SortedSet<String> worded = new TreeSet<>();
    for (String each : texts.stringPropertyNames()) {
      if (each.startsWith("water.problem.")) {
        worded.add(each.substring("water.problem.".length()));
      }
    }
    assertThat(worded).isEqualTo(tested);
  }

  @Test
  void fairwayMayHaveFourHundredPoints() {
    SurveyedWater water = water(WaterText.cut().with(text -> winding(text, 400)));
    assertThat(water.fairways().get(0).line().points()).hasSize(400);
  }

  @Test
  void losesNoneOfManyProblems() {
    WaterText text = WaterText.cut();
    for (int i = 0; i < 300; i++) {
      text.point("LateralBuoy", 446, 700).put("categoryOfLateralMark", 9);
    }
    List<WaterProblem> problems = problems(text.toString());
    assertThat(problems).hasSize(300);
    assertThat(problems.get(299).place())
        .isEqualTo("features[307].properties.categoryOfLateralMark");
    String words =
        Wording.of(Locale.ENGLISH)
            .text("water.problem.code", problems.get(0).arguments().toArray());
    assertThat(words).isEqualTo("9 is none of the codes 1, 2, 3, 4");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "[",
        "null",
        "{\"type\":\"FeatureCollection\",\"features\":[NaN]}",
        "{\"type\":\"FeatureCollection\",\"tide\":1e999,\"features\":[{}]}",
        "{\"type\":\"FeatureCollection\",\"type\":\"FeatureCollection\",\"features\":[]}",
        "{\"type\":\"FeatureCollection\",\"features\":[]} trailing",
        "{\"type\":\"FeatureCollection\",\"features\":{\"0\":1}}"
      })
  void refusesWhatIsNoCollection(String text) {
    assertThatThrownBy(() -> READER.read("the-cut", null, text)).isInstanceOf(UnfitWater.class);
  }

  @Test
  void refusesHostileFilesWithoutDelay() {
    String open = "{\"type\":\"FeatureCollection\",\"features\":";
    List<String> hostile = new ArrayList<>();
    hostile.add(open + "[".repeat(500_000));
    hostile.add(open + "[" + "{},".repeat(340_000) + "{}]}");
    hostile.add(open + "[" + "9".repeat(900_000) + "]}");
    hostile.add(open + "[\"" + "x".repeat(900_000) + "\"]}");
    hostile.add("x".repeat(3 << 20));
    for (String each : hostile) {
      org.junit.jupiter.api.Assertions.assertTimeoutPreemptively(
          Duration.ofSeconds(20),
          () ->
              assertThatThrownBy(() -> READER.read("the-cut", null, each))
                  .isInstanceOf(UnfitWater.class));
    }
  }

  private static void moved(WaterText text, int feature, double east) {
    ArrayNode place = text.coordinates(feature);
    place.set(0, place.get(0).doubleValue() + east / 71_695.7);
  }

  private static void bow(WaterText text) {
    ArrayNode ring = (ArrayNode) text.coordinates(0).get(0);
    ring.insert(1, ring.remove(2));
  }

  private static void flat(WaterText text) {
    ArrayNode ring = (ArrayNode) text.coordinates(2).get(0);
    for (int i = 0; i < 5; i++) {
      ((ArrayNode) ring.get(i)).set(0, -40.0);
    }
  }

  private static void turned(WaterText text) {
    ArrayNode ring = (ArrayNode) text.coordinates(0).get(0);
    for (int i = 1; i < 4; i++) {
      ring.insert(1, ring.remove(i));
    }
  }

  private static void hole(WaterText text) {
    text.coordinates(1).add(text.coordinates(2).get(0).deepCopy());
  }

  private static void dry(WaterText text) {
    for (int i : List.of(0, 1, 3)) {
      text.properties(i).put("featureType", "LandArea");
    }
    text.properties(3).put("featureType", "Wreck");
  }

  private static void ranges(WaterText text) {
    for (int i = 0; i < 45; i++) {
      text.box("DepthArea", 0, 20 * i, 20, 20 * i + 20)
          .put("depthRangeMinimumValue", i)
          .put("depthRangeMaximumValue", i + 1);
    }
  }

  private static void bare(WaterText text) {
    ArrayNode features = (ArrayNode) text.root().get("features");
    features.remove(7);
    features.remove(4);
  }

  private static void winding(WaterText text, int points) {
    ArrayNode line = text.coordinates(4);
    double south = line.get(0).get(1).doubleValue();
    double north = line.get(1).get(1).doubleValue();
    line.removeAll();
    for (int i = 0; i < points; i++) {
      line.addArray().add(-40 + 500 / 71_695.7).add(south + (north - south) * i / (points - 1));
    }
  }

  private static void manyFeatures(WaterText text) {
    ArrayNode features = (ArrayNode) text.root().get("features");
    for (int i = 0; i < 5_000; i++) {
      features.addObject().put("type", "Feature");
    }
  }

  private static void manyPositions(WaterText text) {
    text.feature(3).putObject("geometry").put("type", "MultiPoint").putArray("coordinates");
    for (int i = 0; i < 50_001; i++) {
      text.coordinates(3).addArray().add(-40).add(50);
    }
  }

  private static void flooded(WaterText text) {
    text.properties(0).put("depthRangeMinimumValue", 2.5).put("depthRangeMaximumValue", 4);
  }

  private static void silted(WaterText text) {
    text.properties(1).put("depthRangeMinimumValue", 0.5).put("depthRangeMaximumValue", 1);
    text.properties(4).put("depthRangeMinimumValue", 0.6);
    text.properties(3).put("valueOfSounding", 0.8);
  }
}
