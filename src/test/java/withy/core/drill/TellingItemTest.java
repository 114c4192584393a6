package withy.core.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import withy.core.Chance;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.core.measurement.LearnerModel;
import withy.core.measurement.LearnerState;
import withy.core.response.OfferedOption;

class TellingItemTest {
  private static final OfferedOption KEY = new OfferedOption("key", null);
  private static final OfferedOption FIRST = new OfferedOption("x", "first");
  private static final OfferedOption SECOND = new OfferedOption("y", "second");
  private static final OfferedOption BOTH = new OfferedOption("x", "first", List.of("second"));

  /** One who knows or guesses, .5 each, two options: binary channel worked out by hand. */
  @Test
  void isTheMutualInformationOfAnswerAndState() {
    LearnerState state = state(0.5, 0, 0, 0.5);
    double right = (0.9 + 0.5) / 2;
    double answer = -right * Math.log(right) - (1 - right) * Math.log(1 - right);
    double given = (-0.9 * Math.log(0.9) - 0.1 * Math.log(0.1) + Math.log(2)) / 2;
    assertThat(TellingItem.information(state, List.of(KEY, FIRST)))
        .isCloseTo(answer - given, within(1e-12));
  }

  @Test
  void prefersTheItemThatTellsTwoBeliefsApart() {
    LearnerState torn = state(0.02, 0.48, 0.48, 0.02);
    double apart = TellingItem.information(torn, List.of(KEY, FIRST, SECOND));
    double together =
        TellingItem.information(
            torn, List.of(KEY, BOTH, new OfferedOption("y", OfferedOption.UNEXPLAINED)));
    assertThat(apart).isGreaterThan(together + 0.2);
    assertThat(
            TellingItem.of(
                torn, List.of(List.of(KEY, BOTH), List.of(KEY, FIRST, SECOND)), each -> each))
        .hasSize(3);
  }

  /** On an item that does not name it, the holder of a belief would be right. */
  @Test
  void keepsToItemsThatNameALikelyBelief() {
    LearnerState likely = state(0.1, 0.5, 0.3, 0.1);
    List<OfferedOption> naming = List.of(KEY, FIRST);
    List<OfferedOption> other = List.of(KEY, SECOND, new OfferedOption("z", "third"));
    assertThat(TellingItem.of(likely, List.of(other, naming), each -> each)).isEqualTo(naming);
    assertThat(TellingItem.of(likely, List.of(other), each -> each)).isEqualTo(other);
  }

  @Test
  void tellsNothingWhereAllIsKnown() {
    assertThat(TellingItem.information(state(1, 0, 0, 0), List.of(KEY, FIRST))).isZero();
    assertThat(TellingItem.information(state(0.5, 0.5, 0, 0), List.of(KEY))).isZero();
  }

  @Test
  void knowsTheOptionsOfEveryFormAndTakesTheMostTelling() {
    Practice practice = Practice.parse("canada");
    Composition all = new Composition(List.of(), List.of(), null, 1);
    for (Concept concept : ItemGenerator.measurable(practice, all)) {
      List<Item> items =
          IntStream.range(0, 6)
              .mapToObj(i -> ItemGenerator.item(practice, all.about(concept), 4, i))
              .toList();
      LearnerState state =
          LearnerModel.of(List.of("region-swapped")).after("Ada", concept.id(), List.of());
      for (Item each : items) {
        assertThat(TellingItem.options(each)).as("%s %d", each.form(), each.index()).isNotEmpty();
        assertThat(TellingItem.options(each).stream().filter(o -> o.misconception() == null))
            .hasSize(1);
      }
      assertThat(items).contains(TellingItem.of(state, items, Chance.of(4, 1)));
    }
  }

  private static LearnerState state(double knows, double first, double second, double guesses) {
    TreeMap<String, Double> beliefs = new TreeMap<>();
    beliefs.put("first", first);
    beliefs.put("second", second);
    return new LearnerState("Ada", "lateral-side", 3, knows, beliefs, guesses);
  }
}
