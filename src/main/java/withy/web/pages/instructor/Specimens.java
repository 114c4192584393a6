package withy.web.pages.instructor;

import java.util.ArrayList;
import java.util.List;
import withy.core.item.Grade;
import withy.core.item.Item;
import withy.core.item.Misconception;
import withy.core.item.Quantity;
import withy.drawing.Svg;
import withy.usecase.TalkOver;
import withy.web.pages.ItemPictures;
import withy.wording.ItemWording;
import withy.wording.Wording;

/** Shows items with their keys, and the belief behind each wrong option. */
public final class Specimens {
  private final Wording wording;
  private final ItemWording items;
  private final ItemPictures pictures;

  public Specimens(Wording wording) {
    this.wording = wording;
    this.items = new ItemWording(wording);
    this.pictures = new ItemPictures(wording);
  }

  /** The item with its key. */
  public Specimen of(Item item) {
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
  public String answer(Item item, String given) {
    return wording.text(item.answer().text(given));
  }

  /** How often each answer was given, a line each. */
  public List<String> counts(TalkOver.Asked asked) {
    List<String> counts = new ArrayList<>();
    for (TalkOver.Given each : asked.answers()) {
      boolean right = asked.item().key().equals(each.answer());
      String given = each.answer() == null ? "unsure" : right ? "key" : "answer";
      String answer = each.answer() == null ? "" : answer(asked.item(), each.answer());
      counts.add(wording.text("page.assignment." + given, answer, each.times()));
    }
    return counts;
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
