package withy.usecase;

import java.util.List;
import java.util.Optional;

/** Where instructors are kept. */
public interface Instructors {
  boolean isEmpty();

  /**
   * Keeps the first instructor, who takes over every class without one, all or nothing.
   *
   * @param folded the name in the form in which names are compared
   * @return false, and nothing is kept, if there is an instructor
   */
  boolean addFirst(InstructorAccount account, String folded);

  /** All of them, by name. */
  List<InstructorAccount> all();

  Optional<InstructorAccount> byName(String folded);

  void changePassword(String id, String passwordHash);
}
