package withy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.item.Option;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.Clause;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;
import withy.core.mark.Demand;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkGroup;
import withy.core.mark.MarkKind;
import withy.core.mark.Numbering;
import withy.core.mark.Passing;
import withy.core.mark.Practice;
import withy.core.mark.Recognition;
import withy.core.scenario.TimeOfDay;
import withy.drawing.ItemPicture;
import withy.drawing.MarkDrawing;
import withy.exchange.ItemJson;
import withy.wording.ItemWording;
import withy.wording.Wording;

/**
 * A national mark is added with one entry of the rule book and its words, and with nothing else: an
 * invented one here, whose words stand in the bundle of an invented language.
 */
class AddedMarkTest {
  private static final MarkKind FERRY = new MarkKind("ferry-crossing");
  private static final MarkDescription ENTRY =
      MarkDescription.of(FERRY, MarkGroup.REGULATORY)
          .bodies(BodyShape.PILLAR, BodyShape.CAN)
          .painted(ColourPattern.HORIZONTAL, Colour.WHITE, Colour.GREEN, Colour.WHITE)
          .asks(Passing.UNTOLD, new Demand("give-way-to-ferry"))
          .numbering(Numbering.LETTERED)
          .laidDown(new Clause("Invented Buoyage Order", "first", "section 1", true))
          .build();
  private static final Practice PRACTICE = Practice.CANADA.with(ENTRY);
  private static final ItemWording WORDS = new ItemWording(Wording.of(new Locale("qaa")));

  @Test
  void isRecognised() {
    for (Appearance each : ENTRY.look().appearances(null)) {
      assertThat(Recognition.byDay(PRACTICE, each)).containsExactly(FERRY);
    }
  }

  @Test
  void isDrawnNearAndFromAfar() {
    for (Appearance each : ENTRY.look().appearances(null)) {
      assertThat(MarkDrawing.near(each, "F").text()).startsWith("<svg");
      assertThat(MarkDrawing.distant(each).text()).startsWith("<svg");
    }
  }

  @Test
  void isListedInItsGroup() {
    assertThat(PRACTICE.marks())
        .filteredOn(MarkDescription::group, MarkGroup.REGULATORY)
        .contains(ENTRY);
    assertThat(PRACTICE.kinds()).contains(FERRY);
    assertThat(ENTRY.clauses()).extracting(Clause::document).contains("Invented Buoyage Order");
  }

  @Test
  void isNamedAmongWhatItIsMistakenFor() {
    for (Item item : about(Form.IDENTIFY)) {
      assertThat(item.key()).isEqualTo("ferry-crossing");
      assertThat(item.measures()).isEqualTo(Concept.REGULATORY_MARK);
      assertThat(item.options()).hasSizeBetween(3, 5);
      assertThat(WORDS.option(item.option(item.key()))).isEqualTo("ferry crossing buoy");
      assertThat(WORDS.explanation(item)).contains("White with a green band.");
    }
  }

  @Test
  void isDrilledForWhatItAsks() {
    for (Item item : about(Form.REGULATORY)) {
      assertThat(item.key()).isEqualTo("give-way-to-ferry");
      assertThat(item.options()).hasSizeBetween(3, 5);
      assertThat(WORDS.option(item.option(item.key()))).isEqualTo("Give way to the ferry");
      assertThat(WORDS.explanation(item))
          .isEqualTo("White with a green band. A ferry crosses here.");
    }
  }

  @Test
  void isShownWordedAndWrittenAsAnyOther() {
    List<Item> items = new ArrayList<>(about(Form.IDENTIFY));
    items.addAll(about(Form.REGULATORY));
    for (Item item : items) {
      assertThat(ItemPicture.question(item).view().text()).startsWith("<svg");
      assertThat(ItemJson.line(item, WORDS)).contains("\"kind\":\"ferry-crossing\"");
      for (Option each : item.options()) {
        assertThat(WORDS.option(each)).isNotBlank();
        assertThat(each.misconception() == null).isEqualTo(each.value().equals(item.key()));
      }
    }
  }

  /** The items of a form about it among the first few hundred. */
  private static List<Item> about(Form form) {
    Composition drill =
        new Composition(List.of(Concept.REGULATORY_MARK), List.of(form), TimeOfDay.DAY, 10);
    List<Item> about = new ArrayList<>();
    for (int seed = 0; seed < 120; seed++) {
      Item item = ItemGenerator.item(PRACTICE, drill, seed, 0);
      if (item.scenario().mark().kind().equals(FERRY)) {
        about.add(item);
      }
    }
    assertThat(about).isNotEmpty();
    return about;
  }
}
