package withy.usecase;

import java.util.List;
import java.util.Optional;

/** Where assignments are kept. */
public interface Assignments {
  void add(Assignment assignment);

  Optional<Assignment> find(String id);

  /** The assignments of a class, the newest first. */
  List<Assignment> of(String schoolClass);
}
