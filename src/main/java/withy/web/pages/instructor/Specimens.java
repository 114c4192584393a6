package withy.web.pages.instructor;

import java.util.List;
import withy.core.item.Item;
import withy.core.item.Misconception;
import withy.core.item.Option;
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
    List<KeyedOption> options = item.options().stream().map(each -> option(item, each)).toList();
    return new Specimen(
        pictures.asked(item),
        wording.name(item.measures()),
        items.prompt(item),
        items.facts(item),
        options);
  }

  private KeyedOption option(Item item, Option option) {
    boolean key = option.value().equals(item.key());
    return new KeyedOption(items.option(option), key, behind(option));
  }

  private String behind(Option option) {
    Misconception belief = option.misconception();
    return belief == null ? wording.text("page.compose.key") : wording.name(belief);
  }
}
