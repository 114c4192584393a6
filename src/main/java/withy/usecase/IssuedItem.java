package withy.usecase;

import java.util.List;
import withy.core.item.Item;

/**
 * An item in the hands of a learner.
 *
 * @param position in the learner's drill, from 0
 * @param options in the order in which they are shown; none unless one of several is chosen
 * @param slots of a mark to be put together, in their order; none unless the item asks for that
 * @param legs of a passage, in their order; none unless the item is one
 */
public record IssuedItem(
    String id,
    String learner,
    String assignment,
    int position,
    Item item,
    List<OpaqueOption> options,
    List<OpaqueSlot> slots,
    List<OpaqueLeg> legs) {
  public IssuedItem {
    options = List.copyOf(options);
    slots = List.copyOf(slots);
    legs = List.copyOf(legs);
  }

  /** The item of an issue, which must be the item that was issued. */
  static IssuedItem of(Issue issue, Item item) {
    return new IssuedItem(
        issue.id(),
        issue.learner(),
        issue.assignment(),
        issue.position(),
        item,
        Tokens.options(issue, item),
        Tokens.slots(issue, item),
        Tokens.legs(issue, item));
  }
}
