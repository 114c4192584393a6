package withy.usecase;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import org.jspecify.annotations.Nullable;
import withy.core.item.Item;

/** Draws items again as they were asked, and keeps those that are shown often. */
final class DrawnAgain {
  /** Items that are kept, since drawing one with a water is most of a page's work. */
  private static final int KEPT = 200;

  private final Assignments assignments;
  private final IssuedItems issuedItems;
  private final Responses responses;
  private final ItemSource source;
  private final Cache<String, Item> drawn = Caffeine.newBuilder().maximumSize(KEPT).build();

  DrawnAgain(Ports ports, ItemSource source) {
    this.assignments = ports.assignments();
    this.issuedItems = ports.issuedItems();
    this.responses = ports.responses();
    this.source = source;
  }

  /** The item as it was asked, or null where that cannot be had any more. */
  @Nullable Item of(Issue issue, Assignment drill, @Nullable StoredResponse response) {
    if (!Issuing.isCurrent(issue)) {
      return null;
    }
    Item item = Issuing.redraw(source, issue, drill);
    boolean same = response == null || Grading.agrees(item, response.response());
    return same ? item : null;
  }

  /** The item of an id as it was asked, or null where that cannot be had any more. */
  @Nullable Item of(String id) {
    Item known = drawn.getIfPresent(id);
    Issue issue = known == null ? issuedItems.find(id).orElse(null) : null;
    Assignment drill = issue == null ? null : assignments.find(issue.assignment()).orElse(null);
    if (issue == null || drill == null) {
      return known;
    }
    Item item = of(issue, drill, responses.ofItem(id).orElse(null));
    if (item != null) {
      drawn.put(id, item);
    }
    return item;
  }
}
