package withy.web.api;

import io.javalin.http.HandlerType;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.course.Session;
import withy.core.hydrography.SurveyedWater;
import withy.core.response.DrillSet;
import withy.usecase.Course;
import withy.usecase.KeepCourse;
import withy.usecase.PlanCourse;
import withy.usecase.Reason;
import withy.usecase.Refused;
import withy.usecase.UseCases;
import withy.web.Declined;
import withy.web.Fault;
import withy.web.Json;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.Work;
import withy.wording.PlanReasons;
import withy.wording.Wording;

/** The courses of an instructor, each with the plan of its days. */
final class CourseApi implements RouteGroup {
  private static final String ALL = "/api/courses";
  private static final String ONE = ALL + "/{id}";

  private final UseCases useCases;
  private final KeepCourse courses;
  private final PlanReasons reasons;

  CourseApi(UseCases useCases, Wording wording) {
    this.useCases = useCases;
    this.courses = useCases.keepCourse();
    this.reasons = new PlanReasons(wording);
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get(ALL, Role.INSTRUCTOR, this::list),
        Route.post(ALL, Role.INSTRUCTOR, this::open),
        Route.get(ONE, Role.INSTRUCTOR, this::show),
        put(ONE, this::change),
        new Route(HandlerType.DELETE, ONE, Role.INSTRUCTOR, this::delete),
        put(ONE + "/classes", this::take),
        put(ONE + "/plan", this::plan),
        put(ONE + "/plan/{day}", this::drill),
        Route.post(ONE + "/again", Role.INSTRUCTOR, this::again));
  }

  private static Route put(String path, Work work) {
    return new Route(HandlerType.PUT, path, Role.INSTRUCTOR, work);
  }

  private void list(Visit visit) {
    List<Course> all = courses.all(visit.instructor());
    Json.answer(
        visit.context(), 200, all.stream().map(each -> CourseJson.of(each, reasons)).toList());
  }

  private void show(Visit visit) {
    answer(visit, courses.one(visit.instructor(), id(visit)));
  }

  private void answer(Visit visit, Course course) {
    Json.answer(visit.context(), 200, CourseJson.of(course, reasons));
  }

  /** What a course is, as it is sent. */
  private record Sent(String name, LocalDate practical, List<SurveyedWater> waters) {}

  private Sent sent(Visit visit) {
    Body body = Body.of(visit.context());
    String name = body.text("name");
    LocalDate practical = practical(body);
    List<String> waters = body.has("waters") ? Terms.words(body, "waters") : List.of();
    body.requireNothingElse();
    return new Sent(
        name, practical, waters.stream().distinct().map(each -> water(visit, each)).toList());
  }

  private static LocalDate practical(Body body) {
    return Course.day(body.text("practical")).orElseGet(() -> body.malformed("practical"));
  }

  /** One of a course may have been deleted since. */
  private SurveyedWater water(Visit visit, String id) {
    return courses
        .water(visit.instructor(), id)
        .orElseGet(() -> useCases.listWaters().one(visit.instructor(), id).water());
  }

  private void open(Visit visit) {
    Sent sent = sent(visit);
    made(visit, courses.open(visit.instructor(), sent.name(), sent.practical(), sent.waters()));
  }

  private static void made(Visit visit, Course course) {
    Json.answer(visit.context(), 201, Map.of("id", course.id()));
  }

  private void change(Visit visit) {
    String id = courses.one(visit.instructor(), id(visit)).id();
    Sent sent = sent(visit);
    courses.change(visit.instructor(), id, sent.name(), sent.practical(), sent.waters());
    visit.context().status(204);
  }

  private void take(Visit visit) {
    String id = courses.one(visit.instructor(), id(visit)).id();
    Body body = Body.of(visit.context());
    List<String> classes = Terms.words(body, "classes");
    body.requireNothingElse();
    try {
      courses.take(visit.instructor(), id, classes);
    } catch (Refused unknown) {
      throw unknown.reason() == Reason.UNKNOWN_CLASS
          ? Declined.field(Fault.UNKNOWN_CLASS, "classes")
          : unknown;
    }
    visit.context().status(204);
  }

  /** Proposes the days from today to the practical by what a class needs, and keeps them. */
  private void plan(Visit visit) {
    Course course = courses.one(visit.instructor(), id(visit));
    Body body = Body.of(visit.context());
    String schoolClass = body.text("class");
    int evenings = evenings(body);
    String named = body.optionalText("water");
    ZoneId zone = zone(body);
    body.requireNothingElse();
    SurveyedWater water = named == null ? null : water(visit, named);
    List<Session> sessions = sessions(visit, course, schoolClass, evenings, water, zone);
    courses.plan(visit.instructor(), course.id(), sessions, water);
    show(visit);
  }

  private List<Session> sessions(
      Visit visit,
      Course course,
      String schoolClass,
      int evenings,
      @Nullable SurveyedWater water,
      ZoneId zone) {
    try {
      return useCases
          .planCourse()
          .propose(visit.instructor(), schoolClass, zone, course.practical(), evenings, water);
    } catch (Refused refused) {
      if (refused.reason() == Reason.NOTHING_TO_DRILL) {
        throw Declined.field(Fault.NOTHING_TO_DRILL, "water");
      }
      throw refused;
    }
  }

  private static int evenings(Body body) {
    long evenings = body.wholeNumber("evenings");
    boolean fits = evenings >= 1 && evenings <= PlanCourse.MOST_EVENINGS;
    return fits ? (int) evenings : body.malformed("evenings");
  }

  /** Whose day it is; that of Greenwich unless said. */
  private static ZoneId zone(Body body) {
    String zone = body.optionalText("zone");
    try {
      return zone == null ? ZoneOffset.UTC : ZoneId.of(zone);
    } catch (DateTimeException unknown) {
      return body.malformed("zone");
    }
  }

  private void drill(Visit visit) {
    Course course = courses.one(visit.instructor(), id(visit));
    int day = day(visit, course);
    Body body = Body.of(visit.context());
    String set = body.textOrNull("drillSet");
    body.requireNothingElse();
    courses.drill(visit.instructor(), course.id(), day, set == null ? null : set(visit, set));
    visit.context().status(204);
  }

  private static int day(Visit visit, Course course) {
    String day = visit.context().pathParam("day");
    if (!day.matches("\\d{1,4}") || Integer.parseInt(day) >= course.sessions().size()) {
      throw Declined.of(Fault.NOT_FOUND);
    }
    return Integer.parseInt(day);
  }

  private DrillSet set(Visit visit, String id) {
    return useCases
        .keepDrillSet()
        .find(visit.instructor(), id)
        .orElseThrow(() -> new Refused(Reason.UNKNOWN_DRILL_SET))
        .set();
  }

  private void again(Visit visit) {
    String id = courses.one(visit.instructor(), id(visit)).id();
    Body body = Body.of(visit.context());
    String name = body.text("name");
    LocalDate practical = practical(body);
    body.requireNothingElse();
    made(visit, courses.again(visit.instructor(), id, name, practical));
  }

  private void delete(Visit visit) {
    courses.remove(visit.instructor(), id(visit));
    visit.context().status(204);
  }

  private static String id(Visit visit) {
    return visit.context().pathParam("id");
  }
}
