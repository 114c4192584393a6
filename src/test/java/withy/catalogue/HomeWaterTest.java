package withy.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.Chance;
import withy.core.hydrography.LateralCheck;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.waterway.Keel;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;
import withy.usecase.WaterFiles;

/** The estuary that comes with the program. */
class HomeWaterTest {
  private static final WaterFiles.Authored HOME = new WaterReader().authored().get(0);
  private static final SurveyedWater WATER = HOME.water();

  static List<Practice> practices() {
    return Practice.values();
  }

  @Test
  void hasNothingOddInItsFile() throws Exception {
    assertThat(new WaterReader().read(HOME.id(), null, HOME.text()).remarks()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("practices")
  void bearsOutEveryLateralMarkUnderEveryPractice(Practice practice) {
    Waterway marked = WATER.marked(practice, Chance.of(3, 1));
    int lateral = 0;
    for (PlacedMark each : marked.marks()) {
      if (each.kind().isLateral()) {
        lateral++;
        assertThat(LateralCheck.of(practice, marked, each, Keel.CRUISER))
            .as("%s %s", practice, each.label())
            .contains(LateralCheck.BORNE_OUT);
      }
    }
    assertThat(lateral).isEqualTo(16);
  }

  @ParameterizedTest
  @MethodSource("practices")
  void keepsEveryFairwayDeepEnough(Practice practice) {
    Waterway marked = WATER.marked(practice, Chance.of(3, 1));
    marked
        .fairways()
        .forEach(
            each ->
                assertThat(Keel.CRUISER.isSafe(marked.sail(each.line(), Keel.CRUISER).leastDepth()))
                    .as(each.id())
                    .isTrue());
  }

  @ParameterizedTest
  @MethodSource("practices")
  void givesItemsInboundAndOutbound(Practice practice) {
    Composition composition =
        new Composition(List.of(Concept.LATERAL_SIDE), List.of(Form.SIDE), null, 10, WATER);
    for (int i = 0; i < 30; i++) {
      Item item = ItemGenerator.item(practice, composition, 11, i);
      Waterway water = java.util.Objects.requireNonNull(item.scenario().sailing()).water();
      assertThat(water.depths()).isEqualTo(WATER.depths());
    }
  }

  @Test
  void swapsItsMarksWithTheRegionAndNothingElse() {
    Waterway a = WATER.marked(Practice.IALA_A, Chance.of(3, 1));
    Waterway b = WATER.marked(Practice.IALA_B, Chance.of(3, 1));
    assertThat(a.marks()).hasSameSizeAs(b.marks());
    for (int i = 0; i < a.marks().size(); i++) {
      PlacedMark inA = a.marks().get(i);
      PlacedMark inB = b.marks().get(i);
      assertThat(inB.position()).isEqualTo(inA.position());
      assertThat(inB.kind()).isEqualTo(inA.kind());
      boolean swapped = !inA.appearance().colours().equals(inB.appearance().colours());
      assertThat(swapped).isEqualTo(inA.kind().isLateral() || inA.kind().isPreferredChannel());
    }
  }

  @Test
  void hasALeadingLineOverTheBar() {
    List<MarkKind> kinds =
        WATER.marks().stream().map(each -> each.kind()).filter(MarkKind::isLeading).toList();
    assertThat(kinds).containsExactly(MarkKind.LEADING_FRONT, MarkKind.LEADING_REAR);
  }
}
