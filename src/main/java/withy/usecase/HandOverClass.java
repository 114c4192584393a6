package withy.usecase;

import java.util.List;

/** Lets an instructor hand a class to a colleague, with all that was drilled in it. */
public final class HandOverClass {
  private final OpenClass openClass;
  private final SchoolClasses classes;
  private final Instructors instructors;
  private final Courses courses;

  HandOverClass(OpenClass openClass, Ports ports) {
    this.openClass = openClass;
    this.classes = ports.classes();
    this.instructors = ports.instructors();
    this.courses = ports.courses();
  }

  /** All instructors of the school but this one, by name. */
  public List<InstructorAccount> colleagues(InstructorCaller instructor) {
    return instructors.all().stream().filter(each -> !each.id().equals(instructor.id())).toList();
  }

  /**
   * Hands a class of the instructor's over. It leaves the course that it takes, which stays with
   * the instructor.
   *
   * @throws Refused UNKNOWN_CLASS, NO_COLLEAGUE; TOO_MANY_CLASSES if the colleague can have no more
   */
  public void handOver(InstructorCaller instructor, String classId, String colleague) {
    SchoolClass handed = openClass.of(instructor, classId);
    InstructorAccount to =
        colleagues(instructor).stream()
            .filter(each -> each.id().equals(colleague))
            .findFirst()
            .orElseThrow(() -> new Refused(Reason.NO_COLLEAGUE));
    if (classes.of(to.id()).size() >= OpenClass.MOST) {
      throw new Refused(Reason.TOO_MANY_CLASSES, OpenClass.MOST);
    }
    courses.leave(handed.id());
    classes.handOver(handed.id(), to.id());
  }
}
