package withy.web.api;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.course.Session;
import withy.core.hydrography.SurveyedWater;
import withy.core.response.DrillSet;
import withy.usecase.Course;
import withy.usecase.PlannedSession;
import withy.wording.PlanReasons;

/**
 * A course as scripts see it.
 *
 * @param practical as ISO 8601 writes a day
 * @param waters by id
 * @param classes ids of those that take it
 */
record CourseJson(
    String id,
    String name,
    String practical,
    List<String> waters,
    List<String> classes,
    List<DayJson> plan) {
  static CourseJson of(Course course, PlanReasons reasons) {
    List<DayJson> days = new ArrayList<>();
    for (PlannedSession each : course.sessions()) {
      days.add(DayJson.of(days.size(), each, reasons));
    }
    return new CourseJson(
        course.id(),
        course.name(),
        course.practical().toString(),
        course.waters().stream().map(SurveyedWater::id).toList(),
        course.classes(),
        days);
  }

  /**
   * A day of the plan.
   *
   * @param day its number in the plan, from 0
   * @param first concepts met for the first time
   * @param again concepts met before
   * @param gap days since the day before it in the plan, 0 of the first
   * @param daysLeft until the practical
   * @param water in which its drill lies; null for none in particular
   * @param drillSet the title of the set that is drilled in place of these concepts; null where
   *     they are
   * @param why in one sentence or two
   */
  record DayJson(
      int day,
      String on,
      String purpose,
      boolean together,
      List<String> first,
      List<String> again,
      int gap,
      int daysLeft,
      @Nullable String water,
      @Nullable String drillSet,
      String why) {
    static DayJson of(int day, PlannedSession planned, PlanReasons reasons) {
      Session session = planned.session();
      SurveyedWater water = planned.water();
      DrillSet set = planned.set();
      return new DayJson(
          day,
          session.on().toString(),
          session.purpose().id(),
          session.together(),
          session.first().stream().map(Term::id).toList(),
          session.again().stream().map(Term::id).toList(),
          session.gap(),
          session.daysLeft(),
          water == null ? null : water.id(),
          set == null ? null : set.title(),
          set == null ? reasons.why(session) : reasons.whySet());
    }
  }
}
