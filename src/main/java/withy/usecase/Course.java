package withy.usecase;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import withy.core.hydrography.SurveyedWater;

/**
 * What classes prepare for: a practical on the water.
 *
 * @param waters to be sailed, as they were when they were chosen; may be none
 * @param classes ids of those that take it, the instructor's own
 * @param sessions as the instructor planned them, in the order of their days; empty until then
 */
public record Course(
    String id,
    String instructor,
    String name,
    LocalDate practical,
    List<SurveyedWater> waters,
    List<String> classes,
    List<PlannedSession> sessions) {
  private static final int EARLIEST = 2000;
  private static final int LATEST = 2200;

  public Course {
    waters = List.copyOf(waters);
    classes = List.copyOf(classes);
    sessions = List.copyOf(sessions);
  }

  /** A day of our times on which a practical can be, as ISO 8601 writes it; empty if it is none. */
  public static Optional<LocalDate> day(String text) {
    try {
      return Optional.of(LocalDate.parse(text.strip()))
          .filter(each -> each.getYear() >= EARLIEST && each.getYear() < LATEST);
    } catch (DateTimeException malformed) {
      return Optional.empty();
    }
  }

  Course planned(List<PlannedSession> others) {
    return new Course(id, instructor, name, practical, waters, classes, others);
  }

  Course taking(List<String> others) {
    return new Course(id, instructor, name, practical, waters, others, sessions);
  }

  /** The same under another name and in other waters, its days moved along with its practical. */
  Course changed(String newName, LocalDate day, List<SurveyedWater> others) {
    long later = ChronoUnit.DAYS.between(practical, day);
    List<PlannedSession> moved = sessions.stream().map(each -> each.later(later)).toList();
    return new Course(id, instructor, newName, day, others, classes, moved);
  }

  /** Another course of the same waters and plan that nobody takes yet. */
  Course again(String newId, String newName, LocalDate day) {
    Course moved = changed(newName, day, waters);
    return new Course(newId, instructor, newName, day, waters, List.of(), moved.sessions);
  }
}
