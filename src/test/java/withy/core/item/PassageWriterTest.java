package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import withy.core.mark.ChannelIntent;
import withy.core.mark.Practice;
import withy.core.mark.Travel;

class PassageWriterTest {
  private static final Composition PASSAGES =
      new Composition(List.of(Concept.PASSAGE), List.of(), null, 10);

  private static List<Item> drawn(Practice practice, int seeds) {
    return IntStream.range(0, seeds)
        .mapToObj(seed -> ItemGenerator.item(practice, PASSAGES, seed, seed % 5))
        .toList();
  }

  @Test
  void everyPassageAgreesWithItsWater() {
    for (Practice practice : Practice.values()) {
      drawn(practice, 150).forEach(Truth::holdsOf);
    }
  }

  @Test
  void leadsInAndOutAndIntoEitherChannel() {
    TreeSet<String> met = new TreeSet<>();
    for (Item each : drawn(Practice.IALA_A, 150)) {
      Travel travel = each.scenario().situation().travel();
      ChannelIntent intent = each.scenario().situation().intent();
      met.add(travel.id() + " " + (intent == null ? "past no fork" : intent.id()));
    }
    assertThat(met)
        .containsExactly(
            "against past no fork",
            "against preferred",
            "against secondary",
            "with past no fork",
            "with preferred",
            "with secondary");
  }

  @Test
  void sailsRightUpToTheFirstMarkThatIsLeftOnTheWrongSide() {
    Item item = drawn(Practice.IALA_B, 1).get(0);
    Passage passage = (Passage) item.answer();
    String led = passage.led(Misconception.REGION_SWAPPED).orElseThrow();
    assertThat(passage.track(led).end()).isEqualTo(passage.options(led).get(0).way().track().end());
    assertThat(passage.track(passage.key())).isEqualTo(passage.way().track());
  }
}
