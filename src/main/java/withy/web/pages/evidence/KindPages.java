package withy.web.pages.evidence;

import java.util.List;
import withy.core.Term;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.usecase.UseCases;
import withy.web.Declined;
import withy.web.Fault;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.PageRenderer;

/** A page of each kind of question: the items of one form that measure one concept. */
public final class KindPages implements RouteGroup {
  private final PageRenderer pages;
  private final UseCases useCases;
  private final KindViews views;

  public KindPages(PageRenderer pages, UseCases useCases) {
    this.pages = pages;
    this.useCases = useCases;
    this.views = new KindViews(pages);
  }

  @Override
  public List<Route> routes() {
    return List.of(Route.get("/classes/{id}/kinds/{form}/{concept}", Role.INSTRUCTOR, this::kind));
  }

  private void kind(Visit visit) {
    String id = visit.context().pathParam("id");
    useCases.openClass().of(visit.instructor(), id); // another's class is not there, first of all
    Form form = term(visit, Form.class, "form");
    Concept concept = term(visit, Concept.class, "concept");
    KindView view = views.of(useCases.showKind().of(visit.instructor(), id, form, concept));
    pages.show(visit, "evidence/kind", view.form(), view);
  }

  /**
   * @throws Declined if the address names none of them, naming the part
   */
  private static <E extends Enum<E> & Term> E term(Visit visit, Class<E> type, String part) {
    try {
      return Term.parse(type, visit.context().pathParam(part));
    } catch (IllegalArgumentException unknown) {
      throw Declined.field(Fault.MALFORMED_FIELD, part);
    }
  }
}
