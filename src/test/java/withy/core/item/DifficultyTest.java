package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.scenario.View;

class DifficultyTest {
  private static final Composition ALL = new Composition(List.of(), List.of(), null, 10);
  private static final Composition SIDES =
      new Composition(List.of(Concept.LATERAL_SIDE), List.of(Form.SIDE), null, 10);

  @ParameterizedTest
  @EnumSource(Difficulty.class)
  void everyItemIsAsHardAsAskedForAndTrue(Difficulty difficulty) {
    for (Practice practice : Practice.values()) {
      Composition asked = ALL.graded(difficulty);
      for (Concept each : ItemGenerator.measurable(practice, asked)) {
        for (int index = 0; index < 3; index++) {
          Item item = ItemGenerator.item(practice, asked.about(each), 5, index);
          assertThat(Difficulty.of(item)).isEqualTo(difficulty);
          assertThat(item.measures()).isEqualTo(each);
          assertThat(item.index()).isEqualTo(index);
          Truth.holdsOf(item);
        }
      }
    }
  }

  @Test
  void theSameSeedDrawsTheSameHardItem() {
    Composition hard = SIDES.graded(Difficulty.HARDER);
    Item one = ItemGenerator.item(Practice.IALA_A, hard, 42, 7);
    assertThat(ItemGenerator.item(Practice.IALA_A, hard, 42, 7)).isEqualTo(one);
    assertThat(ItemGenerator.item(Practice.IALA_A, hard, 42, 8)).isNotEqualTo(one);
  }

  @Test
  void inboundNearByIsEasierThanOutboundFromAfar() {
    for (int seed = 0; seed < 200; seed++) {
      Item item = ItemGenerator.item(Practice.IALA_B, SIDES, seed, 0);
      boolean outbound = item.scenario().situation().travel() == Travel.AGAINST;
      boolean afar = item.scenario().situation().view() == View.DISTANT;
      if (Difficulty.of(item) == Difficulty.EASIER) {
        assertThat(outbound && afar).isFalse();
      }
      if (outbound && afar) {
        assertThat(Difficulty.of(item)).isNotEqualTo(Difficulty.EASIER);
      }
    }
  }

  @Test
  void whereNothingIsAsHardTheCompositionAllowsNothing() {
    Composition easy = ALL.about(Concept.CARDINAL_LIGHT).graded(Difficulty.EASIER);
    assertThat(ItemGenerator.measurable(Practice.IALA_A, easy)).isEmpty();
    assertThatThrownBy(() -> ItemGenerator.item(Practice.IALA_A, easy, 1, 0))
        .hasMessage("practice iala-a has no easier item about cardinal-light");
  }

  @Test
  void aPracticeOfItsOwnGoesBeforeThatOfTheClass() {
    Composition own = ALL.about(Concept.REGULATORY_MARK).under(Practice.USA);
    Item item = ItemGenerator.item(Practice.IALA_A, own, 1, 0);
    assertThat(item.scenario().practice()).isEqualTo(Practice.USA);
    assertThat(item).isEqualTo(ItemGenerator.item(Practice.USA, own.under(null), 1, 0));
    assertThat(ItemGenerator.measurable(Practice.IALA_A, own))
        .containsExactly(Concept.REGULATORY_MARK);
    assertThat(ItemGenerator.measurable(Practice.IALA_A, own.under(null))).isEmpty();
  }
}
