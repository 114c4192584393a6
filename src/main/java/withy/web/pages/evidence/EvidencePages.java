package withy.web.pages.evidence;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.usecase.Assignment;
import withy.usecase.Learner;
import withy.usecase.SchoolClass;
import withy.usecase.ShowEvidence;
import withy.usecase.UseCases;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.PageRenderer;

/** The answers behind each figure of a review, and a page of each item that was asked. */
public final class EvidencePages implements RouteGroup {
  private final PageRenderer pages;
  private final UseCases useCases;
  private final EvidenceViews views;

  public EvidencePages(PageRenderer pages, UseCases useCases) {
    this.pages = pages;
    this.useCases = useCases;
    this.views = new EvidenceViews(pages);
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/classes/{id}/responses", Role.INSTRUCTOR, this::list),
        Route.get("/classes/{id}/items/{item}", Role.INSTRUCTOR, this::item));
  }

  private void list(Visit visit) {
    BehindAsked asked = BehindAsked.of(visit);
    ShowEvidence evidence = useCases.showEvidence();
    SchoolClass own = useCases.openClass().of(visit.instructor(), asked.which().schoolClass());
    String named = asked.which().learner();
    @Nullable Learner of =
        named == null ? null : evidence.learner(visit.instructor(), own.id(), named);
    String drill = asked.which().assignment();
    @Nullable Assignment in =
        drill == null ? null : evidence.drill(visit.instructor(), own.id(), drill);
    ShowEvidence.Page page = evidence.page(visit.instructor(), asked.which(), asked.before());
    String title = pages.wording().text("page.responses.title", own.name());
    pages.show(
        visit,
        "evidence/responses",
        title,
        views.list(own, asked, new EvidenceViews.Named(of, in), page));
  }

  private void item(Visit visit) {
    String id = visit.context().pathParam("id");
    String item = visit.context().pathParam("item");
    AskedView view = views.item(useCases.showEvidence().item(visit.instructor(), id, item));
    pages.show(visit, "evidence/item", view.form(), view);
  }
}
