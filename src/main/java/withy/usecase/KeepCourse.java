package withy.usecase;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.course.Session;
import withy.core.hydrography.SurveyedWater;
import withy.core.response.DrillSet;

/** Keeps what an instructor's classes prepare for, with the plan of the days until then. */
public final class KeepCourse {
  /** Courses that one instructor can have. */
  public static final int MOST = 200;

  private final OpenClass openClass;
  private final Courses courses;
  private final Secrets secrets;

  KeepCourse(OpenClass openClass, Courses courses, Secrets secrets) {
    this.openClass = openClass;
    this.courses = courses;
    this.secrets = secrets;
  }

  /** The instructor's courses, the latest practical first. */
  public List<Course> all(InstructorCaller instructor) {
    return courses.of(instructor.id());
  }

  /**
   * One of the instructor's courses.
   *
   * @throws Refused NO_COURSE, also where it is another's
   */
  public Course one(InstructorCaller instructor, String id) {
    return courses
        .find(id)
        .filter(each -> each.instructor().equals(instructor.id()))
        .orElseThrow(() -> new Refused(Reason.NO_COURSE));
  }

  /**
   * The course that a class of the instructor's takes.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public Optional<Course> ofClass(InstructorCaller instructor, String classId) {
    return courses.ofClass(openClass.of(instructor, classId).id());
  }

  /**
   * A new course, which no class takes yet.
   *
   * @throws Refused NAME_UNFIT, TOO_MANY_COURSES
   */
  public Course open(
      InstructorCaller instructor, String name, LocalDate practical, List<SurveyedWater> waters) {
    return add(
        instructor,
        new Course(
            secrets.id(),
            instructor.id(),
            Names.name(name),
            practical,
            waters,
            List.of(),
            List.of()));
  }

  /**
   * The same again: a course of the same waters whose days lie as long before the new practical as
   * they lay before the old one. No class takes it yet.
   *
   * @throws Refused NO_COURSE, NAME_UNFIT, TOO_MANY_COURSES
   */
  public Course again(InstructorCaller instructor, String id, String name, LocalDate practical) {
    Course before = one(instructor, id);
    return add(instructor, before.again(secrets.id(), Names.name(name), practical));
  }

  private Course add(InstructorCaller instructor, Course course) {
    if (all(instructor).size() >= MOST) {
      throw new Refused(Reason.TOO_MANY_COURSES, MOST);
    }
    courses.keep(course);
    return course;
  }

  /**
   * Gives a course another name, practical and waters; its days move along with the practical.
   *
   * @throws Refused NO_COURSE, NAME_UNFIT
   */
  public void change(
      InstructorCaller instructor,
      String id,
      String name,
      LocalDate practical,
      List<SurveyedWater> waters) {
    courses.keep(one(instructor, id).changed(Names.name(name), practical, waters));
  }

  /**
   * Lets these classes of the instructor's take a course, and no others. A class takes one course:
   * it leaves the one that it took before.
   *
   * @throws Refused NO_COURSE, UNKNOWN_CLASS
   */
  public void take(InstructorCaller instructor, String id, List<String> classes) {
    List<String> own =
        classes.stream().distinct().map(each -> openClass.of(instructor, each).id()).toList();
    courses.keep(one(instructor, id).taking(own));
  }

  /**
   * Keeps a plan in place of the one before.
   *
   * @param water in which its drills lie; null for none in particular
   * @throws Refused NO_COURSE
   */
  public void plan(
      InstructorCaller instructor,
      String id,
      List<Session> sessions,
      @Nullable SurveyedWater water) {
    List<PlannedSession> planned =
        sessions.stream().map(each -> new PlannedSession(each, water, null)).toList();
    courses.keep(one(instructor, id).planned(planned));
  }

  /**
   * Drills something else on one day of a plan.
   *
   * @param day number of the day in the plan, from 0
   * @param set null: what the plan proposed
   * @throws Refused NO_COURSE; MALFORMED if the plan has no such day
   */
  public void drill(InstructorCaller instructor, String id, int day, @Nullable DrillSet set) {
    Course course = one(instructor, id);
    List<PlannedSession> sessions = new ArrayList<>(course.sessions());
    requireDay(course, day);
    sessions.set(day, sessions.get(day).with(set));
    courses.keep(course.planned(sessions));
  }

  private static void requireDay(Course course, int day) {
    if (day < 0 || day >= course.sessions().size()) {
      throw new Refused(Reason.MALFORMED, "day");
    }
  }

  /** A water of one of the instructor's courses; it may be one that was deleted since. */
  public Optional<SurveyedWater> water(InstructorCaller instructor, String water) {
    for (Course each : all(instructor)) {
      for (SurveyedWater found : each.waters()) {
        if (found.id().equals(water)) {
          return Optional.of(found);
        }
      }
      for (PlannedSession session : each.sessions()) {
        SurveyedWater found = session.water();
        if (found != null && found.id().equals(water)) {
          return Optional.of(found);
        }
      }
    }
    return Optional.empty();
  }

  /**
   * Forgets a course with its plan. Its classes, their drills and answers stay.
   *
   * @throws Refused NO_COURSE
   */
  public void remove(InstructorCaller instructor, String id) {
    courses.remove(one(instructor, id).id());
  }
}
