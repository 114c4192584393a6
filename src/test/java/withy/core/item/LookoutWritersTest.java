package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import withy.core.mark.Practice;
import withy.core.scenario.RangeLookout;
import withy.core.scenario.SectorLookout;
import withy.core.scenario.SectorQuestion;

class LookoutWritersTest {
  private static final int SEEDS = 2000;
  private static final Composition RANGES =
      new Composition(List.of(Concept.LIGHT_RANGE), List.of(), null, 10);

  @Test
  void everyItemIsTrueUnderEveryPractice() {
    for (Practice practice : Practice.values()) {
      for (int seed = 0; seed < SEEDS; seed++) {
        Item item = item(practice, seed);
        assertThat(item.form()).isEqualTo(Form.LIGHT);
        LookoutTruth.holdsOf(item);
      }
    }
  }

  @Test
  void everyQuestionAndEveryBeliefAboutLightsAshoreIsMet() {
    Set<SectorQuestion> questions = EnumSet.noneOf(SectorQuestion.class);
    Set<Misconception> beliefs = EnumSet.noneOf(Misconception.class);
    for (int seed = 0; seed < SEEDS; seed++) {
      Item item = item(Practice.IALA_A, seed);
      if (item.scenario().lookout() instanceof SectorLookout lookout) {
        questions.add(lookout.question());
      }
      for (Misconception each : Misconception.values()) {
        if (item.answer().led(each).isPresent()) {
          beliefs.add(each);
        }
      }
    }
    assertThat(questions).containsExactly(SectorQuestion.values());
    assertThat(beliefs)
        .containsExactlyInAnyOrder(
            Misconception.SECTOR_FROM_THE_LIGHT,
            Misconception.RELATIVE_READ_AS_TRUE,
            Misconception.BOW_HAND_SWAPPED,
            Misconception.SECTOR_COLOURS_SWAPPED,
            Misconception.NOMINAL_IS_VISIBLE,
            Misconception.EYE_HEIGHT_IGNORED,
            Misconception.HEIGHTS_ADDED_FIRST,
            Misconception.HEIGHT_UNIT_MIXED,
            Misconception.VISIBILITY_IGNORED,
            Misconception.HORIZON_IGNORED,
            Misconception.POWER_IGNORED);
  }

  @Test
  void horizonAndAirLimitTheLightAboutAsOften() {
    Map<Boolean, Integer> limits = new TreeMap<>();
    for (int seed = 0; seed < SEEDS; seed++) {
      if (item(Practice.CANADA, seed).scenario().lookout() instanceof RangeLookout lookout
          && lookout.visibility() != null) {
        limits.merge(lookout.geographicRange() < lookout.luminousRange(), 1, Integer::sum);
      }
    }
    double all = limits.values().stream().mapToInt(Integer::intValue).sum();
    assertThat(limits.get(true) / all).isBetween(0.42, 0.58);
  }

  @Test
  void everyColourIsTheKeyAboutAsOftenAsItsSectorsAreBroad() {
    Map<String, Integer> keys = new LinkedHashMap<>();
    for (int seed = 0; seed < SEEDS; seed++) {
      Item item = item(Practice.IALA_B, seed);
      if (item.answer() instanceof Choice) {
        keys.merge(item.key(), 1, Integer::sum);
      }
    }
    assertThat(keys).containsOnlyKeys("white", "red", "green", "obscured");
    assertThat(keys.values()).allMatch(n -> n > 40);
  }

  /** Americans state heights in feet, others in metres. */
  @Test
  void heightsAreInTheUnitOfThePractice() {
    for (int seed = 0; seed < 200; seed++) {
      for (Practice practice : Practice.values()) {
        if (item(practice, seed).scenario().lookout() instanceof RangeLookout lookout) {
          assertThat(lookout.eye().feet()).isEqualTo(practice.equals(Practice.USA));
        }
      }
    }
  }

  private static Item item(Practice practice, long seed) {
    return ItemGenerator.item(practice, RANGES, seed, 0);
  }
}
