package withy.web.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.item.Option;
import withy.core.mark.Practice;

/** The mark shown beside the one asked about is the one that was named. */
class TakenForTest {
  private static final int ITEMS = 150;

  private static Item item(Practice practice, Form form, List<Concept> concepts, int index) {
    return ItemGenerator.item(
        practice, new Composition(concepts, List.of(form), null, ITEMS), 11, index);
  }

  static List<Practice> practices() {
    return Practice.values();
  }

  @ParameterizedTest
  @MethodSource("practices")
  void isTheMarkOfTheNameThatWasChosenAmongBoardsABoard(Practice practice) {
    for (int i = 0; i < ITEMS; i++) {
      Item item = item(practice, Form.IDENTIFY, List.of(), i);
      for (Option each : item.options()) {
        String named =
            TakenFor.of(item, each.value()).map(mark -> mark.nameKey()).orElse("the right one");
        assertThat(named)
            .as(item.toString())
            .isEqualTo(each.misconception() == null ? "the right one" : each.text().key());
      }
    }
  }

  @Test
  void isNoMarkWhereNoneWasNamed() {
    Item side = item(Practice.USA, Form.SIDE, List.of(), 0);
    assertThat(TakenFor.of(side, side.options().get(0).value())).isEmpty();
    Item identify = item(Practice.USA, Form.IDENTIFY, List.of(), 0);
    assertThat(TakenFor.of(identify, null)).isEmpty();
  }
}
