package withy.usecase;

import java.util.List;
import java.util.Optional;

/** Where courses are kept. */
public interface Courses {
  /**
   * Keeps a course whole, in place of what was kept of it before. Its classes leave the courses in
   * which they were.
   */
  void keep(Course course);

  Optional<Course> find(String id);

  /** An instructor's courses, the latest practical first. */
  List<Course> of(String instructor);

  /** The course that a class takes. */
  Optional<Course> ofClass(String schoolClass);

  /** Takes a class out of its course; nothing happens where it takes none. */
  void leave(String schoolClass);

  /** Forgets a course; its classes, their drills and answers stay. */
  void remove(String id);
}
