package withy.usecase;

import java.util.List;
import java.util.Optional;
import withy.core.item.Concept;

/** Where it is kept which items were issued. */
public interface IssuedItems {
  /**
   * Keeps an issue unless the learner has an item at that position of the assignment.
   *
   * @return the one that stands there, whoever was first
   */
  Issue add(Issue issue);

  Optional<Issue> find(String id);

  /** The item of an assignment that a learner has not answered. */
  Optional<Issue> open(String learner, String assignment);

  /** What the items measure that a learner was given in an assignment, the latest last. */
  List<Concept> concepts(String learner, String assignment);

  /** Takes an item back, unless it was answered. */
  void withdraw(String id);
}
