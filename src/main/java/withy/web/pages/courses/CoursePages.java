package withy.web.pages.courses;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.hydrography.SurveyedWater;
import withy.usecase.Course;
import withy.usecase.KeepCourse;
import withy.usecase.ListWaters;
import withy.usecase.Reason;
import withy.usecase.Refused;
import withy.usecase.UseCases;
import withy.web.Declined;
import withy.web.Fault;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.Form;
import withy.web.pages.PageRenderer;

/** The pages on which an instructor makes courses, puts classes in them and runs them again. */
public final class CoursePages implements RouteGroup {
  private static final String LIST = "courses/list";
  private static final String ONE = "courses/one";
  private static final List<String> NEWS =
      List.of(
          "page.course.news-made",
          "page.course.news-changed",
          "page.course.news-taken",
          "page.course.news-planned",
          "page.course.news-again");

  private final PageRenderer pages;
  private final UseCases useCases;
  private final KeepCourse courses;
  private final CourseViews views;

  public CoursePages(PageRenderer pages, UseCases useCases) {
    this.pages = pages;
    this.useCases = useCases;
    this.courses = useCases.keepCourse();
    this.views = new CourseViews(pages);
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/courses", Role.INSTRUCTOR, this::list),
        Route.post("/courses", Role.INSTRUCTOR, this::open),
        Route.get("/courses/{id}", Role.INSTRUCTOR, this::show),
        Route.post("/courses/{id}", Role.INSTRUCTOR, this::change),
        Route.post("/courses/{id}/classes", Role.INSTRUCTOR, this::take),
        Route.post("/courses/{id}/days/{day}", Role.INSTRUCTOR, this::drill),
        Route.post("/courses/{id}/again", Role.INSTRUCTOR, this::again),
        Route.post("/courses/{id}/delete", Role.INSTRUCTOR, this::delete));
  }

  private void list(Visit visit) {
    boolean deleted = visit.context().queryParam("deleted") != null;
    String news = deleted ? text("page.courses.gone") : null;
    pages.show(visit, LIST, text("page.courses.heading"), list(visit, news, Typed.NOTHING));
  }

  private CoursesView list(Visit visit, @Nullable String news, Typed typed) {
    return views.list(courses.all(visit.instructor()), waters(visit), news, typed);
  }

  private void open(Visit visit) {
    Form form = Form.of(visit);
    Typed typed = Typed.of(form);
    Optional<LocalDate> day = required(form, "practical", typed.day());
    if (day.isPresent()) {
      try {
        List<SurveyedWater> waters = waters(visit, typed, List.of());
        Course made = courses.open(visit.instructor(), typed.name(), day.get(), waters);
        visit.goTo("/courses/" + made.id() + "?made=yes");
        return;
      } catch (Refused refused) {
        refuse(form, "name", refused);
      }
    }
    CoursesView view = list(visit, null, typed);
    pages.showAgain(visit, LIST, text("page.courses.heading"), view, form.problems());
  }

  private Optional<LocalDate> required(Form form, String field, Optional<LocalDate> day) {
    if (day.isEmpty()) {
      form.refuse(field, text("page.courses.practical-unfit"));
    }
    return day;
  }

  private void refuse(Form form, String field, Refused refused) {
    switch (refused.reason()) {
      case NAME_UNFIT -> form.refuse(field, text("page.courses.name-unfit"));
      case TOO_MANY_COURSES -> form.refuse(field, text("page.courses.too-many", KeepCourse.MOST));
      default -> throw refused;
    }
  }

  private void show(Visit visit) {
    Course course = course(visit);
    CourseView view = view(visit, course, Typed.of(course), again(course));
    pages.show(visit, ONE, course.name(), view);
  }

  private Course course(Visit visit) {
    return courses.one(visit.instructor(), id(visit));
  }

  /** Under the same name; when, the instructor has to say. */
  private static Typed again(Course course) {
    return new Typed(course.name(), "", List.of());
  }

  private CourseView view(Visit visit, Course course, Typed typed, Typed again) {
    return views.one(
        course,
        useCases.openClass().classes(visit.instructor()),
        waters(visit),
        useCases.keepDrillSet().all(visit.instructor()),
        news(visit),
        typed,
        again);
  }

  /** What was just done, as the address says. */
  private @Nullable String news(Visit visit) {
    for (String each : NEWS) {
      if (visit.context().queryParam(each.substring(each.lastIndexOf('-') + 1)) != null) {
        return text(each);
      }
    }
    return null;
  }

  private void change(Visit visit) {
    Course course = course(visit);
    Form form = Form.of(visit);
    Typed typed = Typed.of(form);
    Optional<LocalDate> day = required(form, "practical", typed.day());
    if (day.isPresent()) {
      try {
        List<SurveyedWater> waters = waters(visit, typed, course.waters());
        courses.change(visit.instructor(), course.id(), typed.name(), day.get(), waters);
        visit.goTo("/courses/" + course.id() + "?changed=yes");
        return;
      } catch (Refused refused) {
        refuse(form, "name", refused);
      }
    }
    CourseView view = view(visit, course, typed, again(course));
    pages.showAgain(visit, ONE, course.name(), view, form.problems());
  }

  private void take(Visit visit) {
    courses.take(visit.instructor(), id(visit), Form.of(visit).all("class"));
    visit.goTo("/courses/" + id(visit) + "?taken=yes");
  }

  private void drill(Visit visit) {
    String set = Form.of(visit).text("set");
    if (!set.equals(CourseViews.SAME)) {
      courses.drill(
          visit.instructor(),
          id(visit),
          day(visit),
          set.isEmpty() ? null : useCases.keepDrillSet().one(visit.instructor(), set).set());
    }
    visit.goTo("/courses/" + id(visit) + "?planned=yes");
  }

  private static int day(Visit visit) {
    try {
      return Integer.parseInt(visit.context().pathParam("day"));
    } catch (NumberFormatException none) {
      throw Declined.of(Fault.NOT_FOUND);
    }
  }

  private void again(Visit visit) {
    Course course = course(visit);
    Form form = Form.of(visit);
    Typed typed = new Typed(form.text("againName"), form.text("againPractical"), List.of());
    Optional<LocalDate> day = required(form, "againPractical", typed.day());
    if (day.isPresent()) {
      try {
        Course made = courses.again(visit.instructor(), course.id(), typed.name(), day.get());
        visit.goTo("/courses/" + made.id() + "?again=yes");
        return;
      } catch (Refused refused) {
        refuse(form, "againName", refused);
      }
    }
    CourseView view = view(visit, course, Typed.of(course), typed);
    pages.showAgain(visit, ONE, course.name(), view, form.problems());
  }

  private void delete(Visit visit) {
    courses.remove(visit.instructor(), id(visit));
    visit.goTo("/courses?deleted=yes");
  }

  private List<ListWaters.Listed> waters(Visit visit) {
    return useCases.listWaters().all(visit.instructor());
  }

  /** The waters that were ticked. */
  private List<SurveyedWater> waters(Visit visit, Typed typed, List<SurveyedWater> before) {
    List<ListWaters.Listed> all = waters(visit);
    return typed.waters().stream()
        .distinct()
        .map(
            id ->
                all.stream()
                    .map(ListWaters.Listed::water)
                    .filter(each -> each.id().equals(id))
                    .findFirst()
                    .or(() -> before.stream().filter(each -> each.id().equals(id)).findFirst())
                    .orElseThrow(() -> new Refused(Reason.UNKNOWN_WATER)))
        .toList();
  }

  private static String id(Visit visit) {
    return visit.context().pathParam("id");
  }

  private String text(String key, Object... arguments) {
    return pages.wording().text(key, arguments);
  }
}
