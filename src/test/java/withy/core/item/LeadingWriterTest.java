package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import withy.core.mark.Practice;
import withy.core.scenario.Scenario;

/** What the items about leading lines are like. */
class LeadingWriterTest {
  private static final int SEEDS = 2000;

  @Test
  void everyWayToSteerFollowsFromTheBearingsUnderEveryPractice() {
    for (Practice practice : Practice.values()) {
      for (int seed = 0; seed < SEEDS; seed++) {
        Item item = drawn(practice, seed);
        Truth.holdsOf(item);
        assertThat(item.options())
            .extracting(Option::value)
            .containsExactlyInAnyOrder("steer-port", "steer-starboard", "on-the-line");
      }
    }
  }

  @Test
  void everyWayAndEverySightIsMetAboutAsOften() {
    Map<String, Integer> met = new LinkedHashMap<>();
    for (int seed = 0; seed < SEEDS; seed++) {
      Item item = drawn(Practice.USA, seed);
      Scenario scenario = item.scenario();
      boolean ahead = LeadingBeliefs.pair(scenario, 0).ahead(scenario.situation().heading());
      String sight = scenario.marks().size() > 2 ? "three" : ahead ? "ahead" : "astern";
      met.merge(item.key() + " " + sight, 1, Integer::sum);
      met.merge(scenario.situation().time().id(), 1, Integer::sum);
    }
    assertThat(met).hasSize(11);
    assertThat(met.values()).allMatch(n -> n > SEEDS / 18);
  }

  @Test
  void everyBeliefIsMet() {
    Set<Misconception> beliefs = new LinkedHashSet<>();
    for (int seed = 0; seed < SEEDS; seed++) {
      drawn(Practice.CANADA, seed).options().stream()
          .map(Option::misconception)
          .filter(each -> each != null)
          .forEach(beliefs::add);
    }
    assertThat(beliefs)
        .containsExactlyInAnyOrder(
            Misconception.STEER_TOWARD_REAR,
            Misconception.ASTERN_AS_AHEAD,
            Misconception.SMALL_GAP_IGNORED,
            Misconception.WRONG_LEAD,
            Misconception.BOW_ON_MARKS,
            Misconception.STREAM_OVER_MARKS);
  }

  /** Whoever takes another pair goes wrong. */
  @Test
  void theWrongPairLeadsAstray() {
    for (int seed = 0; seed < SEEDS; seed++) {
      Item item = drawn(Practice.IALA_A, seed);
      if (item.scenario().marks().size() > 2) {
        assertThat(Misconception.WRONG_LEAD.answer(Form.LEADING, item.scenario()))
            .isPresent()
            .get()
            .isNotEqualTo(item.key());
      }
    }
  }

  private static Item drawn(Practice practice, long seed) {
    Composition leading = new Composition(List.of(), List.of(Form.LEADING), null, 10);
    return ItemGenerator.item(practice, leading, seed, 0);
  }
}
