package withy.usecase;

import java.time.Clock;
import withy.core.item.Composition;

/** Gives a class the item that is put to it in its room. */
record RoomAssignments(Assignments assignments, Clock clock, Secrets secrets) {
  /**
   * What is put to a class by an assignment.
   *
   * @throws Refused UNKNOWN_ASSIGNMENT where it is a drill
   */
  static RoomItem room(Assignment assignment) {
    RoomItem room = assignment.room();
    if (room == null) {
      throw new Refused(Reason.UNKNOWN_ASSIGNMENT);
    }
    return room;
  }

  /**
   * Gives it and closes what was put to the class before, since it is asked one thing at a time.
   *
   * @param composition from which the item is drawn again
   * @throws Refused NAME_UNFIT
   */
  Assignment put(String schoolClass, String title, Composition composition, RoomItem room) {
    Assignment put =
        new Assignment(
            secrets.id(),
            schoolClass,
            Names.title(title),
            composition,
            null,
            Moments.now(clock),
            room,
            DrillTerms.USUAL);
    assignments.add(put);
    assignments.revealOthers(put);
    return put;
  }
}
