package withy.usecase;

import java.util.List;
import java.util.Optional;

/** Where learners are kept. */
public interface Learners {
  /** What became of a learner who wanted to join. */
  enum Added {
    ADDED,
    NICKNAME_TAKEN,
    CLASS_FULL
  }

  /**
   * Keeps a learner if the class has room and the nickname is free, even where many join at once.
   *
   * @param folded the nickname in the form in which names are compared
   * @param returnDigest the digest of the code with which the learner comes back
   * @param most learners that a class can have
   */
  Added add(Learner learner, String folded, String returnDigest, int most);

  Optional<Learner> find(String id);

  /** A learner of a class; empty for one of another. */
  default Optional<Learner> member(String schoolClass, String id) {
    return find(id).filter(found -> found.schoolClass().equals(schoolClass));
  }

  Optional<Learner> byReturnCode(String returnDigest);

  /** The learners of a class by nickname. */
  List<Learner> of(String schoolClass);
}
