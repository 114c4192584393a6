package withy.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import withy.core.item.Assembly;
import withy.core.item.Choice;
import withy.core.item.Item;
import withy.core.item.Option;
import withy.core.item.Part;
import withy.core.item.Passage;
import withy.core.item.Passage.Leg;
import withy.core.item.Slot;
import withy.usecase.OpaqueSlot.OpaquePart;

/** What stands for the options and parts of an item where a learner must not know what they are. */
final class Tokens {
  /** Between the word for a feature and the value of a part, or the number of a leg and a side. */
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
    List<Leg> legs = legs(item);
    for (int i = 0; i < legs.size(); i++) {
      for (Option side : legs.get(i).sides().options()) {
        offered.add(name(i, side));
      }
    }
    return offered;
  }

  private static List<Slot> slots(Item item) {
    return item.answer() instanceof Assembly assembly ? assembly.slots() : List.of();
  }

  private static String name(Slot slot, Part part) {
    return slot.feature().id() + JOINT + part.value();
  }

  private static List<Leg> legs(Item item) {
    return item.answer() instanceof Passage passage ? passage.legs() : List.of();
  }

  private static String name(int leg, Option side) {
    return leg + JOINT + side.value();
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

  /** The marks of a passage with their sides, as the item orders them. */
  static List<OpaqueLeg> legs(Issue issue, Item item) {
    List<Leg> legs = legs(item);
    return IntStream.range(0, legs.size()).mapToObj(i -> leg(issue, i, legs.get(i))).toList();
  }

  private static OpaqueLeg leg(Issue issue, int number, Leg leg) {
    List<OpaqueOption> sides =
        leg.sides().options().stream()
            .map(each -> new OpaqueOption(issue.token(name(number, each)), each))
            .toList();
    return new OpaqueLeg(number, leg, sides);
  }

  private static OpaqueSlot slot(Issue issue, Slot slot) {
    List<OpaquePart> parts =
        slot.parts().stream()
            .map(each -> new OpaquePart(issue.token(name(slot, each)), each))
            .toList();
    return new OpaqueSlot(slot.feature(), parts);
  }
}
