package withy.usecase;

/** Finds assignments of an instructor's own classes, and no others. */
final class OwnedAssignments {
  private final OpenClass openClass;
  private final Assignments assignments;

  OwnedAssignments(OpenClass openClass, Assignments assignments) {
    this.openClass = openClass;
    this.assignments = assignments;
  }

  /**
   * An assignment of a class of the instructor's.
   *
   * @throws Refused UNKNOWN_ASSIGNMENT, also where it is another instructor's
   */
  Assignment find(InstructorCaller instructor, String id) {
    Assignment found =
        assignments.find(id).orElseThrow(() -> new Refused(Reason.UNKNOWN_ASSIGNMENT));
    boolean isOwn =
        openClass.classes(instructor).stream()
            .anyMatch(each -> each.id().equals(found.schoolClass()));
    if (!isOwn) {
      throw new Refused(Reason.UNKNOWN_ASSIGNMENT);
    }
    return found;
  }
}
