package withy.web.pages.instructor;

import java.util.List;
import withy.core.item.Grade;
import withy.core.item.Item;
import withy.core.item.Misconception;
import withy.core.item.Quantity;
import withy.drawing.Svg;
import withy.web.pages.ItemPictures;
import withy.wording.ItemWording;
import withy.wording.Wording;

/** Shows items with their keys, and the belief behind each wrong option. */
final class Specimens {
  private final Wording wording;
  private final ItemWording items;
  private final ItemPictures pictures;

  Specimens(Wording wording) {
    this.wording = wording;
    this.items = new ItemWording(wording);
    this.pictures = new ItemPictures(wording);
  }

  Specimen of(Item item) {
    List<KeyedOption> options =
        item.answer().foreseen().stream().map(each -> keyed(item, each)).toList();
    return new Specimen(
        shown(item),
        ItemPictures.isChart(item),
        wording.name(item.measures()),
        items.prompt(item),
        items.facts(item),
        options);
  }

  /** What a learner sees, and in place of nothing the mark or the light that is right. */
  private List<Svg> shown(Item item) {
    List<Svg> asked = pictures.asked(item);
    return asked.isEmpty() ? List.of(pictures.small(item)) : asked;
  }

  private KeyedOption keyed(Item item, String given) {
    Grade grade = item.answer().grade(given);
    return new KeyedOption(text(item, given, grade.correct()), grade.correct(), behind(grade));
  }

  /** An answer to an item as a person reads it. */
  String answer(Item item, String given) {
    return wording.text(item.answer().text(given));
  }

  private String text(Item item, String given, boolean key) {
    String text = wording.text(item.answer().text(given));
    return key && item.answer() instanceof Quantity quantity
        ? wording.text("page.item.give-or-take", text, quantity.toleranceText())
        : text;
  }

  private String behind(Grade grade) {
    Misconception belief = grade.misconception();
    return belief == null ? wording.text("page.compose.key") : wording.name(belief);
  }
}
