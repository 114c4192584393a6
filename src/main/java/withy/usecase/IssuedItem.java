package withy.usecase;

import java.util.List;
import withy.core.item.Item;

/**
 * An item in the hands of a learner.
 *
 * @param position in the learner's drill, from 0
 * @param options in the order in which they are shown
 */
public record IssuedItem(
    String id,
    String learner,
    String assignment,
    int position,
    Item item,
    List<OpaqueOption> options) {
  public IssuedItem {
    options = List.copyOf(options);
  }

  /** The item of an issue, which must be the item that was issued. */
  static IssuedItem of(Issue issue, Item item) {
    List<OpaqueOption> options =
        issue.choices().stream()
            .map(each -> new OpaqueOption(each.token(), item.option(each.value())))
            .toList();
    return new IssuedItem(
        issue.id(), issue.learner(), issue.assignment(), issue.position(), item, options);
  }
}
