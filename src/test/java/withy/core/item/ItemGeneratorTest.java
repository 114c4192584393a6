package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.mark.Practice;
import withy.core.scenario.TimeOfDay;

class ItemGeneratorTest {
  private static final int SEEDS = 2000;
  private static final Composition ALL = new Composition(List.of(), List.of(), null, 10);

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void everyItemIsTrue(Practice practice) {
    for (int seed = 0; seed < SEEDS / 4; seed++) {
      Truth.holdsOf(ItemGenerator.item(practice, ALL, seed, seed % 5));
    }
  }

  @Test
  void theSameSeedDrawsTheSameItem() {
    Item one = ItemGenerator.item(Practice.CANADA, ALL, 42, 7);
    assertThat(ItemGenerator.item(Practice.CANADA, ALL, 42, 7)).isEqualTo(one);
    assertThat(ItemGenerator.item(Practice.CANADA, ALL, 42, 8)).isNotEqualTo(one);
  }

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void everyConceptIsMetAboutAsOften(Practice practice) {
    List<Concept> dry = new ArrayList<>(ItemGenerator.measurable(practice, ALL));
    dry.removeAll(List.of(Concept.PASSAGE, Concept.CLEARANCE, Concept.CHART_OVER_RULE));
    Composition quick = new Composition(dry, List.of(), null, 10);
    Map<Concept, Integer> met = new EnumMap<>(Concept.class);
    for (int seed = 0; seed < SEEDS; seed++) {
      met.merge(ItemGenerator.item(practice, quick, seed, 0).measures(), 1, Integer::sum);
    }
    double even = (double) SEEDS / met.size();
    assertThat(met.keySet()).containsExactlyElementsOf(dry);
    assertThat(met.values())
        .allSatisfy(n -> assertThat((double) n).isBetween(even * .7, even * 1.3));
  }

  @ParameterizedTest
  @EnumSource(Concept.class)
  void aDrillOfOneConceptMeasuresItAlone(Concept concept) {
    Composition one = new Composition(List.of(concept), List.of(), null, 10);
    for (Practice practice : Practice.values()) {
      for (int seed = 0; seed < 50 && !ItemGenerator.measurable(practice, one).isEmpty(); seed++) {
        assertThat(ItemGenerator.item(practice, one, seed, 3).measures()).isEqualTo(concept);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(TimeOfDay.class)
  void keepsToTheFormsAndTheTimeOfTheComposition(TimeOfDay time) {
    List<Form> forms = List.of(Form.SIDE, Form.IDENTIFY);
    Composition composition = new Composition(List.of(), forms, time, 10);
    for (int seed = 0; seed < 300; seed++) {
      Item item = ItemGenerator.item(Practice.IALA_A, composition, seed, 0);
      assertThat(item.form()).isIn(forms);
      assertThat(item.scenario().situation().time()).isEqualTo(time);
    }
  }

  @Test
  void everyFormIsMet() {
    Set<Form> met = EnumSet.noneOf(Form.class);
    for (int seed = 0; seed < 300; seed++) {
      met.add(ItemGenerator.item(Practice.IALA_B, ALL, seed, 0).form());
    }
    assertThat(met).containsExactly(Form.values());
  }

  @Test
  void thereAreNoCardinalMarksToPassInTheUsa() {
    Composition pass = new Composition(List.of(), List.of(Form.CARDINAL_PASS), null, 10);
    assertThat(ItemGenerator.measurable(Practice.USA, pass)).isEmpty();
    assertThatThrownBy(() -> ItemGenerator.item(Practice.USA, pass, 1, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("practice usa has no cardinal-pass item");
  }

  @Test
  void saysWhichConceptsAndTimeAllowNothing() {
    Composition lights =
        new Composition(
            List.of(Concept.LATERAL_LIGHT, Concept.LIGHT_CHARACTER),
            List.of(Form.SIDE, Form.LIGHT),
            TimeOfDay.DAY,
            10);
    assertThatThrownBy(() -> ItemGenerator.item(Practice.IALA_A, lights, 1, 0))
        .hasMessage(
            "practice iala-a has no side or light item about lateral-light or light-character by day");
  }

  @Test
  void measuresTheWholeSyllabusOfItsForms() {
    assertThat(ItemGenerator.measurable(Practice.IALA_A, ALL))
        .containsExactly(
            Concept.LATERAL_SIDE,
            Concept.LATERAL_SHAPE,
            Concept.LATERAL_LIGHT,
            Concept.NUMBERING,
            Concept.BUOYAGE_DIRECTION,
            Concept.REGION,
            Concept.PREFERRED_CHANNEL,
            Concept.CARDINAL_IDENTITY,
            Concept.CARDINAL_SIDE,
            Concept.CARDINAL_LIGHT,
            Concept.ISOLATED_DANGER,
            Concept.SAFE_WATER,
            Concept.SPECIAL_MARK,
            Concept.EMERGENCY_WRECK,
            Concept.FIXED_MARK,
            Concept.LEADING_LINE,
            Concept.CLEARANCE,
            Concept.CHART_OVER_RULE,
            Concept.LIGHT_CHARACTER,
            Concept.LIGHT_RANGE,
            Concept.PASSAGE);
  }

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void noOptionIsLeftWithoutAKnownBelief(Practice practice) {
    for (int seed = 0; seed < 500; seed++) {
      assertThat(ItemGenerator.item(practice, ALL, seed, 1).options())
          .noneMatch(each -> each.misconception() == Misconception.UNEXPLAINED);
    }
  }

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void questionsOfKindAndCharacterOfferThreeToFiveOptions(Practice practice) {
    Composition kinds =
        new Composition(List.of(), List.of(Form.IDENTIFY, Form.LIGHT, Form.REGULATORY), null, 10);
    for (int seed = 0; seed < SEEDS; seed++) {
      Item item = ItemGenerator.item(practice, kinds, seed, 0);
      if (item.measures() != Concept.LIGHT_RANGE) {
        assertThat(item.options()).as(() -> String.valueOf(item)).hasSizeBetween(3, 5);
      }
    }
  }
}
