package withy.usecase;

import java.util.List;
import withy.core.mark.Practice;

/** Opens a class and finds it again for the instructor whose it is. */
public final class OpenClass {
  /** Classes that one instructor can have. */
  static final int MOST = 500;

  private final SchoolClasses classes;
  private final Secrets secrets;

  public OpenClass(SchoolClasses classes, Secrets secrets) {
    this.classes = classes;
    this.secrets = secrets;
  }

  /**
   * A new class with a join code of its own.
   *
   * @throws Refused NAME_UNFIT, TOO_MANY_CLASSES
   */
  public SchoolClass open(InstructorCaller instructor, String name, Practice practice) {
    if (classes(instructor).size() >= MOST) {
      throw new Refused(Reason.TOO_MANY_CLASSES, MOST);
    }
    return Founding.found(classes, secrets, Names.name(name), practice, instructor.id());
  }

  /** The instructor's classes by name. */
  public List<SchoolClass> classes(InstructorCaller instructor) {
    return classes.of(instructor.id());
  }

  /**
   * A class of the instructor's.
   *
   * @throws Refused UNKNOWN_CLASS, also where it is another's
   */
  public SchoolClass of(InstructorCaller instructor, String id) {
    return classes
        .find(id)
        .filter(found -> instructor.id().equals(found.instructor()))
        .orElseThrow(() -> new Refused(Reason.UNKNOWN_CLASS));
  }

  /**
   * The class that a learner joined.
   *
   * @throws Refused UNKNOWN_CLASS once it is gone
   */
  public SchoolClass of(LearnerCaller learner) {
    return classes.find(learner.schoolClass()).orElseThrow(() -> new Refused(Reason.UNKNOWN_CLASS));
  }
}
