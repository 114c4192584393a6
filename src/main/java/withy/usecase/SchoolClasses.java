package withy.usecase;

import java.util.List;
import java.util.Optional;

/** Where classes are kept. */
public interface SchoolClasses {
  boolean isEmpty();

  /**
   * @return false, and nothing is kept, if another class has the code
   */
  boolean add(SchoolClass schoolClass);

  Optional<SchoolClass> find(String id);

  Optional<SchoolClass> byCode(String code);

  /** Makes a class another instructor's. */
  void handOver(String id, String instructor);

  /** An instructor's classes by name. */
  List<SchoolClass> of(String instructor);
}
