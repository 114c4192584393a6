package withy.web.pages.instructor;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.response.DrillKind;
import withy.usecase.AssignDrill.Progress;
import withy.usecase.Assignment;
import withy.usecase.JudgeReadiness;
import withy.usecase.SchoolClass;
import withy.usecase.TalkOver;
import withy.usecase.UseCases;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.Form;
import withy.web.pages.PageRenderer;

/** The page of an assignment: who has done it, what came of it, and more time for one learner. */
public final class AssignmentPages implements RouteGroup {
  private static final String TEMPLATE = "school/assignment";

  private final PageRenderer pages;
  private final UseCases useCases;
  private final AssignmentViews views;

  public AssignmentPages(PageRenderer pages, UseCases useCases) {
    this.pages = pages;
    this.useCases = useCases;
    this.views = new AssignmentViews(pages);
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/assignments/{id}", Role.INSTRUCTOR, this::show),
        Route.post("/assignments/{id}/extension", Role.INSTRUCTOR, this::extend));
  }

  private void show(Visit visit) {
    AssignmentView view = view(visit);
    pages.show(visit, TEMPLATE, view.title(), view);
  }

  private AssignmentView view(Visit visit) {
    Progress progress = useCases.assignDrill().one(visit.instructor(), id(visit));
    Assignment shown = progress.assignment();
    SchoolClass own = useCases.openClass().of(visit.instructor(), shown.schoolClass());
    boolean test = shown.terms().kind() == DrillKind.READINESS;
    JudgeReadiness.@Nullable Readiness readiness =
        test ? useCases.judgeReadiness().of(visit.instructor(), own.id()) : null;
    List<TalkOver.Asked> items =
        shown.terms().kind().isAlike()
            ? useCases.talkOver().items(visit.instructor(), shown.id())
            : List.of();
    return views.view(own, progress, readiness, items);
  }

  private void extend(Visit visit) {
    Form form = Form.of(visit);
    Optional<Instant> due = pages.days().read(form.text("due"));
    if (due.isEmpty()) {
      form.refuse("due", pages.wording().text("page.compose.due-unfit"));
      AssignmentView view = view(visit);
      pages.showAgain(visit, TEMPLATE, view.title(), view, form.problems());
      return;
    }
    useCases.assignDrill().extend(visit.instructor(), id(visit), form.text("learner"), due.get());
    visit.goTo("/assignments/" + id(visit));
  }

  private static String id(Visit visit) {
    return visit.context().pathParam("id");
  }
}
