package withy.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.waterway.Waterway;
import withy.fixture.Waters;

class ChartLayoutTest {
  static List<Waterway> waters() {
    return List.copyOf(ChartSheets.waters().values());
  }

  static List<Waterway> handmade() {
    return List.of(Waters.river(), Waters.shoal(), Waters.rock());
  }

  @ParameterizedTest
  @MethodSource("waters")
  void noSoundingHidesAMarkOrOtherWords(Waterway water) {
    ChartLayout layout = layout(water);
    List<Box> taken = new ArrayList<>(signs(water, layout));
    taken.addAll(words(layout));
    assertThat(layout.soundings()).hasSizeGreaterThan(5);
    for (Soundings.Sounding each : layout.soundings()) {
      assertThat(taken).noneMatch(each.box()::meets);
      assertThat(layout.soundings()).filteredOn(o -> o.box().meets(each.box())).hasSize(1);
    }
  }

  @ParameterizedTest
  @MethodSource("waters")
  void noWordsHideAMarkOrEachOther(Waterway water) {
    ChartLayout layout = layout(water);
    List<Box> words = words(layout);
    for (Box each : words) {
      assertThat(signs(water, layout)).noneMatch(each::meets);
      assertThat(words).filteredOn(each::meets).hasSize(1);
      assertThat(ChartSheet.of(water.depths()).area().contains(each)).isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("waters")
  void everySoundingTellsTheDepthWhereItStands(Waterway water) {
    ChartSheet sheet = ChartSheet.of(water.depths());
    for (Soundings.Sounding each : layout(water).soundings()) {
      double depth = sheet.depth(each.at());
      SoundingText text = each.text();
      double told = (text.metres() + text.decimetres() / 10.0) * (text.drying() ? -1 : 1);
      assertThat(told).isBetween(depth - 1, depth + 1e-6);
      assertThat(depth).isGreaterThanOrEqualTo(-ChartOptions.HIGH_WATER);
    }
  }

  @Test
  void soundsTheFairwayFromEndToEnd() {
    Waterway river = Waters.river();
    ChartSheet sheet = ChartSheet.of(river.depths());
    long inside =
        layout(river).soundings().stream()
            .filter(each -> river.fairways().get(0).contains(sheet.place(each.at())))
            .count();
    assertThat(inside).isGreaterThanOrEqualTo(5);
  }

  @ParameterizedTest
  @MethodSource("handmade")
  void findsTheSamePlacesEveryTime(Waterway water) {
    assertThat(layout(water).soundings()).isEqualTo(layout(water).soundings());
    assertThat(layout(water).labels()).isEqualTo(layout(water).labels());
  }

  @Test
  void standsTheArrowOfBuoyageBesideTheFairwayAlongItsDirection() {
    Waterway river = Waters.river();
    ChartSheet sheet = ChartSheet.of(river.depths());
    ChartLines.Arrow arrow = layout(river).arrowsOfBuoyage().get(0);
    assertThat(river.fairways().get(0).contains(sheet.place(arrow.at()))).isFalse();
    assertThat(river.fairways().get(0).direction(sheet.place(arrow.at())).bearing())
        .isEqualTo(arrow.direction());
  }

  @ParameterizedTest
  @CsvSource({
    "3.44, 3, 4, false",
    "3.99, 3, 9, false",
    "7, 7, 0, false",
    "0.3, 0, 3, false",
    "0, 0, 0, false",
    "-0.4, 0, 4, true",
    "-1.25, 1, 3, true",
    "20.9, 20, 9, false",
    "21.9, 21, 0, false"
  })
  void cutsDepthsToTheShallowerSide(double depth, int metres, int decimetres, boolean drying) {
    assertThat(SoundingText.of(depth)).isEqualTo(new SoundingText(metres, decimetres, drying));
  }

  private static ChartLayout layout(Waterway water) {
    return ChartLayout.of(
        water, ChartSheet.of(water.depths()), ChartOptions.plain(), Lettering.ENGLISH);
  }

  private static List<Box> signs(Waterway water, ChartLayout layout) {
    return water.marks().stream().map(layout::sign).toList();
  }

  private static List<Box> words(ChartLayout layout) {
    List<Box> words = new ArrayList<>();
    layout.labels().forEach(each -> words.add(each.box()));
    layout.bearings().forEach(each -> words.add(each.box()));
    layout.depths().forEach(each -> words.add(each.box()));
    return words;
  }
}
