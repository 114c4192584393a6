package withy.web.pages.instructor;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.course.CoursePlan;
import withy.core.course.Session;
import withy.core.hydrography.SurveyedWater;
import withy.usecase.Reason;
import withy.usecase.Refused;
import withy.usecase.UseCases;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.FieldProblem;
import withy.web.pages.PageRenderer;

/** The page that proposes what a class drills when; each row of it turns into a drill. */
public final class PlanPages implements RouteGroup {
  private static final String TEMPLATE = "school/plan";
  private static final int MOST_EVENINGS = 50;

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
    return List.of(Route.get("/classes/{id}/plan", Role.INSTRUCTOR, this::plan));
  }

  private void plan(Visit visit) {
    PlanAsked asked = PlanAsked.of(visit);
    List<FieldProblem> problems = asked.isEmpty() ? List.of() : problems(asked);
    if (asked.isEmpty() || !problems.isEmpty()) {
      answer(visit, asked, List.of(), problems);
      return;
    }
    try {
      answer(visit, asked, sessions(visit, asked), List.of());
    } catch (Refused refused) {
      answer(visit, asked, List.of(), List.of(problem(refused)));
    }
  }

  private List<FieldProblem> problems(PlanAsked asked) {
    List<FieldProblem> problems = new ArrayList<>();
    if (asked.day().isEmpty()) {
      problems.add(practicalUnfit());
    }
    if (asked.meetings() < 1 || asked.meetings() > MOST_EVENINGS) {
      problems.add(new FieldProblem("evenings", text("page.plan.evenings-unfit", MOST_EVENINGS)));
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
      Visit visit, PlanAsked asked, List<Session> sessions, List<FieldProblem> problems) {
    PlanView view =
        views.view(
            useCases.openClass().of(visit.instructor(), id(visit)),
            useCases.listWaters().all(visit.instructor()),
            asked,
            sessions);
    if (problems.isEmpty()) {
      pages.show(visit, TEMPLATE, text("page.plan.heading"), view);
    } else {
      pages.showAgain(visit, TEMPLATE, text("page.plan.heading"), view, problems);
    }
  }

  private @Nullable SurveyedWater water(Visit visit, String id) {
    return id.isEmpty() ? null : useCases.listWaters().one(visit.instructor(), id).water();
  }

  private static String id(Visit visit) {
    return visit.context().pathParam("id");
  }

  private String text(String key, Object... arguments) {
    return pages.wording().text(key, arguments);
  }
}
