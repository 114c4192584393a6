package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.fixture.Channels;

/** What the items about numbers of marks are like. */
class NumberWriterTest {
  private static final int SEEDS = 2000;

  @Test
  void everyNumberIsToldByTheOthersUnderEveryPractice() {
    for (Practice practice : Practice.values()) {
      for (int seed = 0; seed < SEEDS; seed++) {
        Item item = drawn(practice, seed);
        Truth.holdsOf(item);
        assertThat(item.options()).hasSizeBetween(3, 5);
        assertThat(item.measures()).isEqualTo(Concept.NUMBERING);
      }
    }
  }

  @Test
  void channelsAreOfManyKinds() {
    Set<String> met = new LinkedHashSet<>();
    Set<Misconception> beliefs = new LinkedHashSet<>();
    for (int seed = 0; seed < SEEDS; seed++) {
      Item item = drawn(Practice.IALA_A, seed);
      Scenario scenario = item.scenario();
      met.add(scenario.situation().travel().id());
      met.add(scenario.marks().size() + " marks");
      met.add("hands " + scenario.marks().stream().map(SightedMark::kind).distinct().count());
      met.add("pair " + (NumberedChannel.of(scenario).pair() != null));
      item.options().stream()
          .map(Option::misconception)
          .filter(each -> each != null)
          .forEach(beliefs::add);
    }
    assertThat(met)
        .contains("with", "against", "hands 1", "hands 2", "pair true", "pair false")
        .contains("2 marks", "3 marks", "4 marks", "5 marks", "6 marks");
    assertThat(beliefs)
        .containsExactlyInAnyOrder(
            Misconception.NUMBERS_AS_MET,
            Misconception.NUMBERS_FROM_THE_LAND,
            Misconception.NUMBERS_CONSECUTIVE,
            Misconception.PARITY_BY_SIDE,
            Misconception.PARITY_SWAPPED,
            Misconception.OTHER_HAND_CONTINUED,
            Misconception.PAIR_SHARES_NUMBER,
            Misconception.SKIPPED_NUMBER_IGNORED);
  }

  @Test
  void theNumberAskedForIsUnknownWhereTheChannelMayHaveLeftOneOut() {
    assertThat(number("green 1 + red 2, green 3, red ?, green 7 + red 8")).isNull();
    assertThat(number("green 1, red ?")).isNull();
    assertThat(number("green 1 + red 2, red ?, green 5 + red 6")).isEqualTo(4);
    assertThat(number("red ?, red 4")).isEqualTo(2);
    assertThat(number("red 4, green 5, green 7, red ?")).isNull();
    assertThat(number("green ?, red 12, green 15")).isNull();
    assertThat(number("red 4, green 5, red ?, green 7")).isEqualTo(6);
  }

  @Test
  void oddToPortIsTheTruthInRegionB() {
    Scenario inB = Channels.of(Practice.IALA_B, Travel.WITH, "red 6, red ?");
    assertThat(Misconception.PARITY_BY_SIDE.answer(Form.NUMBER, inB)).contains("8");
    assertThat(Misconception.PARITY_SWAPPED.answer(Form.NUMBER, inB)).contains("7");
  }

  @Test
  void numbersThatAreSeenToGrowDoNotTempt() {
    Scenario seen = Channels.of(Practice.IALA_B, Travel.AGAINST, "red ?, red 8, red 10");
    assertThat(Misconception.NUMBERS_FROM_THE_LAND.answer(Form.NUMBER, seen)).isEmpty();
    assertThat(Misconception.NUMBERS_AS_MET.answer(Form.NUMBER, seen)).isEmpty();
  }

  private static @org.jspecify.annotations.Nullable Integer number(String channel) {
    return NumberedChannel.of(Channels.of(Practice.IALA_A, Travel.WITH, channel)).number();
  }

  private static Item drawn(Practice practice, long seed) {
    Composition numbers = new Composition(List.of(), List.of(Form.NUMBER), null, 10);
    return ItemGenerator.item(practice, numbers, seed, 0);
  }
}
