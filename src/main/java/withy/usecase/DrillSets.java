package withy.usecase;

import java.util.List;
import java.util.Optional;
import withy.core.response.DrillSet;

/** The drill sets that come with the program, for instructors to begin with. */
public interface DrillSets {
  /** Whoever needs none. */
  DrillSets NONE = List::of;

  /**
   * A drill set under the word by which scripts and links name it.
   *
   * @param id lower case with hyphens
   */
  record Named(String id, DrillSet set) {}

  /** All of them, in the order in which a course would use them. */
  List<Named> all();

  /** The one of an id. */
  default Optional<DrillSet> find(String id) {
    return all().stream().filter(each -> each.id().equals(id)).map(Named::set).findFirst();
  }
}
