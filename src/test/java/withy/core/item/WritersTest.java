package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import withy.core.mark.ChannelIntent;
import withy.core.mark.MarkKind;
import withy.core.mark.Parity;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.scenario.LightQuestion;
import withy.core.scenario.Scenario;
import withy.core.scenario.Setting;
import withy.core.scenario.SightedMark;
import withy.core.scenario.View;
import withy.core.waterway.ConventionalDirection;

/** What the items of each form are like. */
class WritersTest {
  private static final int SEEDS = 400;

  @Test
  void lateralSidesBeginInboundAndThenOutboundByShape() {
    Item first = drawn(Form.SIDE, Concept.LATERAL_SIDE, 1, 0);
    Item second = drawn(Form.SIDE, Concept.LATERAL_SIDE, 1, 1);
    assertThat(first.scenario().situation().travel()).isEqualTo(Travel.WITH);
    assertThat(beliefs(first)).containsExactly(Misconception.REGION_SWAPPED);
    assertThat(second.scenario().situation().travel()).isEqualTo(Travel.AGAINST);
    assertThat(second.scenario().situation().view()).isEqualTo(View.DISTANT);
    assertThat(beliefs(second)).containsExactly(Misconception.DIRECTION_IGNORED);
  }

  @Test
  void outboundByColourNamesBothBeliefsAboutAsOften() {
    int swapped = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Item item = drawn(Form.SIDE, Concept.LATERAL_SIDE, seed, 2);
      swapped += beliefs(item).contains(Misconception.REGION_SWAPPED) ? 1 : 0;
    }
    assertThat(swapped).isBetween(SEEDS * 2 / 5, SEEDS * 3 / 5);
  }

  @Test
  void lateralShapeTemptsWhoeverSwapsShapesWithTheRegion() {
    for (int seed = 0; seed < 50; seed++) {
      Item item = drawn(Form.SIDE, Concept.LATERAL_SHAPE, seed, 0);
      assertThat(item.scenario().situation().view()).isEqualTo(View.DISTANT);
      assertThat(beliefs(item)).containsExactly(Misconception.SHAPE_SWAPPED);
    }
  }

  @Test
  void numbersGoByColourAndOtherMarksBearLetters() {
    for (int seed = 0; seed < SEEDS; seed++) {
      SightedMark mark = drawn(Form.IDENTIFY, null, seed, 0).scenario().mark();
      String label = mark.label();
      if (label != null && mark.kind().isLateral()) {
        boolean red = mark.appearance().colours().get(0).id().equals("red");
        assertThat(Parity.of(Integer.parseInt(label))).isEqualTo(red ? Parity.EVEN : Parity.ODD);
      } else if (label != null) {
        assertThat(label).matches("[A-Z]");
      }
    }
  }

  @Test
  void everyBodyTopmarkAndLightOfAMarkIsMet() {
    Set<String> met = new LinkedHashSet<>();
    for (int seed = 0; seed < SEEDS; seed++) {
      SightedMark mark = drawn(Form.IDENTIFY, Concept.PREFERRED_CHANNEL, seed, 0).scenario().mark();
      met.add(mark.appearance().body().id());
      met.add("topmark " + (mark.appearance().topmark() != null));
      met.add("light " + (mark.appearance().light() != null));
    }
    assertThat(met).contains("can", "conical", "pillar", "spar", "topmark true", "light false");
  }

  @Test
  void silhouettesOfLateralMarksAreNotAskedForTheirKind() {
    for (int seed = 0; seed < SEEDS; seed++) {
      Scenario scenario = drawn(Form.IDENTIFY, null, seed, 0).scenario();
      boolean hand =
          scenario.mark().kind().isLateral() || scenario.mark().kind().isPreferredChannel();
      assertThat(hand && scenario.situation().view() == View.DISTANT).isFalse();
    }
  }

  @Test
  void aCardinalMarkIsPassedOnItsNamedSideAndTheOptionsTellTheHand() {
    for (int seed = 0; seed < 100; seed++) {
      Item item = drawn(Form.CARDINAL_PASS, Concept.CARDINAL_SIDE, seed, 0);
      MarkKind kind = item.scenario().mark().kind();
      assertThat(item.key()).isEqualTo("pass-" + kind.quadrant().id());
      assertThat(item.option("pass-" + kind.quadrant().opposite().id()).misconception())
          .isIn(Misconception.DANGER_NAMED, Misconception.CARDINAL_AS_LATERAL);
      boolean dry = item.scenario().sailing() == null;
      assertThat(item.options()).hasSizeBetween(dry ? 3 : 2, 4);
    }
  }

  @Test
  void aJunctionIsAskedForBothChannelsAndBothWays() {
    Set<String> met = new LinkedHashSet<>();
    for (int seed = 0; seed < 100; seed++) {
      Item item = drawn(Form.CHANNEL_CHOICE, Concept.PREFERRED_CHANNEL, seed, 0);
      ChannelIntent intent = Objects.requireNonNull(item.scenario().situation().intent());
      met.add(item.scenario().situation().travel().id() + " " + intent.id());
      assertThat(item.options()).hasSize(item.scenario().sailing() == null ? 3 : 2);
    }
    assertThat(met)
        .containsExactlyInAnyOrder(
            "with preferred", "with secondary", "against preferred", "against secondary");
  }

  @Test
  void inHarbourAndRiverTheDirectionAlongTheCoastSaysTheOpposite() {
    Set<Setting> met = EnumSet.noneOf(Setting.class);
    for (int seed = 0; seed < 100; seed++) {
      Item item = drawn(Form.DIRECTION, Concept.BUOYAGE_DIRECTION, seed, 0);
      var situation = item.scenario().situation();
      met.add(Objects.requireNonNull(situation.setting()));
      assertThat(item.scenario().marks()).isEmpty();
      if (situation.general() == null) {
        assertThat(situation.setting()).isEqualTo(Setting.COAST);
      } else {
        assertThat(new ConventionalDirection(situation.general()).travel(situation.heading()))
            .isPresent()
            .get()
            .isNotEqualTo(situation.travel());
      }
    }
    assertThat(met).containsExactly(Setting.values());
  }

  @Test
  void aLightIsNamedAsChartsWriteItWithoutBlanks() {
    for (int seed = 0; seed < 100; seed++) {
      Item item = drawn(Form.LIGHT, Concept.LIGHT_CHARACTER, seed, 0);
      String shown =
          Objects.requireNonNull(item.scenario().mark().appearance().light()).shortNotation();
      if (item.scenario().question() != LightQuestion.WHICH_LIGHT) {
        assertThat(item.key()).isEqualTo(shown.replace(' ', '_'));
      }
      assertThat(item.options()).hasSizeBetween(3, 5);
    }
  }

  private static Item drawn(
      Form form, @org.jspecify.annotations.Nullable Concept concept, long seed, int index) {
    List<Concept> concepts = concept == null ? List.of() : List.of(concept);
    Composition composition = new Composition(concepts, List.of(form), null, 10);
    return ItemGenerator.item(Practice.IALA_A, composition, seed, index);
  }

  private static List<Misconception> beliefs(Item item) {
    return item.options().stream().map(Option::misconception).filter(Objects::nonNull).toList();
  }
}
