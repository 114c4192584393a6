package withy.web.pages.courses;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import withy.core.course.Session;
import withy.core.course.Theme;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Concept;
import withy.core.response.DrillSet;
import withy.usecase.Course;
import withy.usecase.KeepDrillSet;
import withy.usecase.ListWaters;
import withy.usecase.PlannedSession;
import withy.usecase.SchoolClass;
import withy.web.pages.Days;
import withy.web.pages.PageRenderer;
import withy.wording.Wording;

/** Puts courses into words. */
final class CourseViews {
  /** The drill set of a day as it is. */
  static final String SAME = "same";

  private final Wording wording;
  private final Days days;

  CourseViews(PageRenderer pages) {
    this.wording = pages.wording();
    this.days = pages.days();
  }

  CoursesView list(
      List<Course> courses, List<ListWaters.Listed> waters, @Nullable String news, Typed typed) {
    return new CoursesView(
        courses.stream().map(this::row).toList(),
        news,
        typed.name(),
        typed.practical(),
        waters(waters, List.of(), typed));
  }

  private CourseRow row(Course course) {
    int classes = course.classes().size();
    return new CourseRow(
        course.id(),
        course.name(),
        wording.text("page.courses.practical-on", days.dayOfYear(course.practical())),
        classes == 1
            ? wording.text("page.courses.one-class")
            : wording.text("page.courses.classes", classes));
  }

  CourseView one(
      Course course,
      List<SchoolClass> classes,
      List<ListWaters.Listed> waters,
      List<KeepDrillSet.Listed> sets,
      @Nullable String news,
      Typed typed,
      Typed again) {
    List<SchoolClass> taking =
        classes.stream().filter(each -> course.classes().contains(each.id())).toList();
    return new CourseView(
        course.id(),
        course.name(),
        says(course),
        news,
        taking.stream().map(each -> new ClassLink(each.id(), each.name())).toList(),
        classes.stream()
            .map(each -> new Tick(each.id(), each.name(), taking.contains(each)))
            .toList(),
        wording.text(planSays(course, taking)),
        days(course, sets),
        typed.name(),
        typed.practical(),
        waters(waters, course.waters(), typed),
        again.name(),
        again.practical());
  }

  private String says(Course course) {
    String day = days.dayOfYear(course.practical());
    String waters =
        course.waters().stream().map(SurveyedWater::title).collect(Collectors.joining(", "));
    return waters.isEmpty()
        ? wording.text("page.courses.practical-on", day)
        : wording.text("page.course.practical-in", day, waters);
  }

  private static String planSays(Course course, List<SchoolClass> taking) {
    if (!course.sessions().isEmpty()) {
      return "page.course.plan-says";
    }
    return taking.isEmpty() ? "page.course.plan-none" : "page.course.plan-propose";
  }

  /** Those that the instructor has, and of the course those that were deleted since. */
  private static List<Tick> waters(
      List<ListWaters.Listed> all, List<SurveyedWater> ofCourse, Typed typed) {
    Map<String, SurveyedWater> known = new LinkedHashMap<>();
    all.forEach(each -> known.put(each.water().id(), each.water()));
    ofCourse.forEach(each -> known.putIfAbsent(each.id(), each));
    return known.values().stream()
        .map(each -> new Tick(each.id(), each.title(), typed.waters().contains(each.id())))
        .toList();
  }

  private List<DayRow> days(Course course, List<KeepDrillSet.Listed> sets) {
    List<DayRow> rows = new ArrayList<>();
    for (PlannedSession each : course.sessions()) {
      Session session = each.session();
      DrillSet set = each.set();
      rows.add(
          new DayRow(
              rows.size(),
              days.day(session.on()),
              wording.name(session.purpose()),
              wording.text(session.together() ? "page.plan.together" : "page.plan.alone"),
              set == null ? themes(session) : set.title(),
              sets(set, sets)));
    }
    return rows;
  }

  private String themes(Session session) {
    Set<Theme> themes = new LinkedHashSet<>();
    List<Concept> met = session.first().isEmpty() ? session.again() : session.first();
    met.forEach(each -> themes.add(Theme.of(each)));
    return themes.stream().map(wording::name).collect(Collectors.joining(", "));
  }

  private List<Tick> sets(@Nullable DrillSet chosen, List<KeepDrillSet.Listed> sets) {
    List<Tick> ticks = new ArrayList<>();
    ticks.add(new Tick("", wording.text("page.course.as-planned"), chosen == null));
    for (KeepDrillSet.Listed each : sets) {
      boolean first = ticks.stream().noneMatch(Tick::chosen);
      ticks.add(new Tick(each.id(), each.set().title(), first && each.set().equals(chosen)));
    }
    if (chosen != null && ticks.stream().noneMatch(Tick::chosen)) {
      ticks.add(new Tick(SAME, chosen.title(), true)); // the set was changed or deleted since
    }
    return ticks;
  }
}
