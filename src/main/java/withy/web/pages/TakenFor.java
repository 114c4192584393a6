package withy.web.pages;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.item.Choice;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.Option;
import withy.core.mark.MarkDescription;

/** The mark for which an answer takes the one that is asked about. */
public final class TakenFor {
  private TakenFor() {}

  /**
   * The mark of the name that was chosen, a board among boards; empty where no mark is named, or
   * the right one is.
   */
  public static Optional<MarkDescription> of(Item item, @Nullable String chosen) {
    boolean named = item.form() == Form.IDENTIFY || item.form() == Form.LIGHT;
    if (!named || item.key().equals(chosen) || !(item.answer() instanceof Choice)) {
      return Optional.empty();
    }
    List<MarkDescription> marks =
        item.scenario().practice().marks().stream()
            .filter(each -> each.kind().id().equals(chosen))
            .toList();
    return marks.stream()
        .filter(each -> item.options().stream().anyMatch(option -> names(option, chosen, each)))
        .findFirst()
        .or(() -> marks.stream().findFirst());
  }

  private static boolean names(Option option, @Nullable String chosen, MarkDescription mark) {
    return option.value().equals(chosen) && option.text().key().equals(mark.nameKey());
  }
}
