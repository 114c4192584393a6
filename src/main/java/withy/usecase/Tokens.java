package withy.usecase;

import java.util.ArrayList;
import java.util.List;
import withy.core.item.Assembly;
import withy.core.item.Choice;
import withy.core.item.Item;
import withy.core.item.Part;
import withy.core.item.Slot;
import withy.usecase.OpaqueSlot.OpaquePart;

/** What stands for the options and parts of an item where a learner must not know what they are. */
final class Tokens {
  /** Between the word for a feature and the value of a part, neither of which holds it. */
  private static final String JOINT = "/";

  private Tokens() {}

  /** New tokens for all that an item offers; none where the answer is a number. */
  static List<Issue.Choice> made(Item item, Secrets secrets) {
    return offered(item).stream()
        .map(each -> new Issue.Choice(secrets.optionToken(), each))
        .toList();
  }

  private static List<String> offered(Item item) {
    List<String> offered = new ArrayList<>();
    item.options().forEach(each -> offered.add(each.value()));
    for (Slot slot : slots(item)) {
      slot.parts().forEach(part -> offered.add(name(slot, part)));
    }
    return offered;
  }

  private static List<Slot> slots(Item item) {
    return item.answer() instanceof Assembly assembly ? assembly.slots() : List.of();
  }

  private static String name(Slot slot, Part part) {
    return slot.feature().id() + JOINT + part.value();
  }

  /** The options in the order in which they were issued. */
  static List<OpaqueOption> options(Issue issue, Item item) {
    return item.answer() instanceof Choice choice
        ? issue.choices().stream()
            .map(each -> new OpaqueOption(each.token(), choice.option(each.value())))
            .toList()
        : List.of();
  }

  /** The slots with their parts, as the item orders them. */
  static List<OpaqueSlot> slots(Issue issue, Item item) {
    return slots(item).stream().map(each -> slot(issue, each)).toList();
  }

  private static OpaqueSlot slot(Issue issue, Slot slot) {
    List<OpaquePart> parts =
        slot.parts().stream()
            .map(each -> new OpaquePart(issue.token(name(slot, each)), each))
            .toList();
    return new OpaqueSlot(slot.feature(), parts);
  }
}
