package withy.web.pages.instructor;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.course.CoursePlan;
import withy.core.course.Session;
import withy.core.hydrography.SurveyedWater;
import withy.core.response.DrillSet;
import withy.usecase.AssignDrill;
import withy.usecase.Assignment;
import withy.usecase.Course;
import withy.usecase.PlanCourse;
import withy.usecase.PlannedSession;
import withy.usecase.Reason;
import withy.usecase.Refused;
import withy.usecase.SchoolClass;
import withy.usecase.UseCases;
import withy.web.Declined;
import withy.web.Fault;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.Days;
import withy.web.pages.FieldProblem;
import withy.web.pages.Form;
import withy.web.pages.PageRenderer;

/** The page that proposes what a class drills when; each row of it turns into a drill. */
public final class PlanPages implements RouteGroup {
  private static final String TEMPLATE = "school/plan";

  private final PageRenderer pages;
  private final UseCases useCases;
  private final PlanViews views;

  public PlanPages(PageRenderer pages, UseCases useCases) {
    this.pages = pages;
    this.useCases = useCases;
    this.views = new PlanViews(pages);
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/classes/{id}/plan", Role.INSTRUCTOR, this::plan),
        Route.post("/classes/{id}/plan", Role.INSTRUCTOR, this::keep),
        Route.post("/classes/{id}/plan/{day}", Role.INSTRUCTOR, this::assign));
  }

  private void plan(Visit visit) {
    PlanAsked asked = PlanAsked.of(visit);
    Course course = useCases.keepCourse().ofClass(visit.instructor(), id(visit)).orElse(null);
    if (!asked.isEmpty()) {
      propose(visit, asked, course);
    } else if (course == null) {
      answer(visit, asked, null, List.of(), List.of());
    } else if (course.sessions().isEmpty()) {
      proposeUntold(visit, course);
    } else {
      PlanView view = view(visit, PlanAsked.of(course), course, course.sessions(), true);
      pages.show(visit, TEMPLATE, text("page.plan.heading"), view);
    }
  }

  private void propose(Visit visit, PlanAsked asked, @Nullable Course course) {
    List<FieldProblem> problems = problems(asked);
    if (!problems.isEmpty()) {
      answer(visit, asked, course, List.of(), problems);
      return;
    }
    try {
      answer(visit, asked, course, sessions(visit, asked), List.of());
    } catch (Refused refused) {
      answer(visit, asked, course, List.of(), List.of(problem(refused)));
    }
  }

  /** Nobody asked yet: what a course says may be past, which is no mistake of the instructor's. */
  private void proposeUntold(Visit visit, Course course) {
    PlanAsked asked = PlanAsked.of(course);
    try {
      answer(visit, asked, course, sessions(visit, asked), List.of());
    } catch (Refused unfit) {
      problem(unfit);
      answer(visit, asked, course, List.of(), List.of());
    }
  }

  /** Keeps for the course of the class what was proposed. */
  private void keep(Visit visit) {
    PlanAsked asked = PlanAsked.of(Form.of(visit));
    Course course =
        useCases
            .keepCourse()
            .ofClass(visit.instructor(), id(visit))
            .orElseThrow(() -> new Refused(Reason.NO_COURSE));
    List<FieldProblem> problems = problems(asked);
    if (!problems.isEmpty()) {
      answer(visit, asked, course, List.of(), problems);
      return;
    }
    try {
      List<Session> sessions = sessions(visit, asked);
      SurveyedWater water = water(visit, asked.water());
      useCases.keepCourse().plan(visit.instructor(), course.id(), sessions, water);
      visit.goTo("/courses/" + course.id() + "?planned=yes");
    } catch (Refused refused) {
      answer(visit, asked, course, List.of(), List.of(problem(refused)));
    }
  }

  /** Assigns the drill set that is planned for a day; other days turn into drills by composing. */
  private void assign(Visit visit) {
    PlannedSession planned = planned(visit);
    DrillSet set = planned.set();
    if (set == null) {
      throw Declined.of(Fault.NOT_FOUND);
    }
    Days days = pages.days();
    Assignment assigned =
        useCases
            .assignDrill()
            .assign(
                visit.instructor(),
                id(visit),
                set.title(),
                set.composition(),
                days.read(days.endOf(planned.on())).orElseThrow(),
                new AssignDrill.Wanted(
                    PlanViews.kind(planned.session()),
                    days.read(days.startOf(planned.on())).orElseThrow(),
                    List.of()));
    visit.goTo("/classes/" + id(visit) + "?assigned=" + assigned.id());
  }

  private PlannedSession planned(Visit visit) {
    List<PlannedSession> sessions =
        useCases
            .keepCourse()
            .ofClass(visit.instructor(), id(visit))
            .map(Course::sessions)
            .orElse(List.of());
    String day = visit.context().pathParam("day");
    boolean known = day.matches("\\d{1,4}") && Integer.parseInt(day) < sessions.size();
    if (!known) {
      throw Declined.of(Fault.NOT_FOUND);
    }
    return sessions.get(Integer.parseInt(day));
  }

  private List<FieldProblem> problems(PlanAsked asked) {
    List<FieldProblem> problems = new ArrayList<>();
    if (asked.day().isEmpty()) {
      problems.add(practicalUnfit());
    }
    if (asked.meetings() < 1 || asked.meetings() > PlanCourse.MOST_EVENINGS) {
      problems.add(
          new FieldProblem("evenings", text("page.plan.evenings-unfit", PlanCourse.MOST_EVENINGS)));
    }
    return problems;
  }

  private FieldProblem problem(Refused refused) {
    if (refused.reason() == Reason.MALFORMED) {
      return practicalUnfit();
    }
    if (refused.reason() == Reason.NOTHING_TO_DRILL) {
      return new FieldProblem("water", text("page.plan.water-unfit"));
    }
    throw refused;
  }

  private FieldProblem practicalUnfit() {
    return new FieldProblem("practical", text("page.plan.practical-unfit", CoursePlan.LONGEST));
  }

  private List<Session> sessions(Visit visit, PlanAsked asked) {
    LocalDate practical = asked.day().orElseThrow();
    return useCases
        .planCourse()
        .propose(
            visit.instructor(),
            id(visit),
            pages.days().zoneId(),
            practical,
            asked.meetings(),
            water(visit, asked.water()));
  }

  private void answer(
      Visit visit,
      PlanAsked asked,
      @Nullable Course course,
      List<Session> sessions,
      List<FieldProblem> problems) {
    SurveyedWater water = sessions.isEmpty() ? null : water(visit, asked.water());
    List<PlannedSession> planned =
        sessions.stream().map(each -> new PlannedSession(each, water, null)).toList();
    PlanView view = view(visit, asked, course, planned, false);
    if (problems.isEmpty()) {
      pages.show(visit, TEMPLATE, text("page.plan.heading"), view);
    } else {
      pages.showAgain(visit, TEMPLATE, text("page.plan.heading"), view, problems);
    }
  }

  private PlanView view(
      Visit visit,
      PlanAsked asked,
      @Nullable Course course,
      List<PlannedSession> sessions,
      boolean kept) {
    SchoolClass schoolClass = useCases.openClass().of(visit.instructor(), id(visit));
    return views.view(schoolClass, waters(visit, course), asked, course, sessions, kept);
  }

  /** Those that the instructor has, and of the course those that were deleted since. */
  private List<SurveyedWater> waters(Visit visit, @Nullable Course course) {
    Map<String, SurveyedWater> waters = new LinkedHashMap<>();
    useCases
        .listWaters()
        .all(visit.instructor())
        .forEach(each -> waters.put(each.water().id(), each.water()));
    if (course != null) {
      course.waters().forEach(each -> waters.putIfAbsent(each.id(), each));
    }
    return List.copyOf(waters.values());
  }

  private @Nullable SurveyedWater water(Visit visit, String id) {
    return id.isEmpty()
        ? null
        : useCases
            .keepCourse()
            .water(visit.instructor(), id)
            .orElseGet(() -> useCases.listWaters().one(visit.instructor(), id).water());
  }

  private static String id(Visit visit) {
    return visit.context().pathParam("id");
  }

  private String text(String key, Object... arguments) {
    return pages.wording().text(key, arguments);
  }
}
