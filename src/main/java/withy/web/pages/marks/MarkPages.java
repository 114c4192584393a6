package withy.web.pages.marks;

import java.util.List;
import java.util.Optional;
import withy.core.mark.MarkDescription;
import withy.core.mark.Practice;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.PageRenderer;

/** The pages of all marks, of each one, of the two regions, and the posters. */
public final class MarkPages implements RouteGroup {
  private final PageRenderer pages;
  private final MarkViews views;

  public MarkPages(PageRenderer pages) {
    this.pages = pages;
    this.views = new MarkViews(pages.wording());
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get(MarkViews.PATH, Role.ANYONE, this::practices),
        Route.get(MarkViews.REGIONS, Role.ANYONE, this::regions),
        Route.get(MarkViews.PATH + "/{practice}", Role.ANYONE, this::marks),
        Route.get(MarkViews.PATH + "/{practice}/poster", Role.ANYONE, this::poster),
        Route.get(MarkViews.PATH + "/{practice}/{mark}", Role.ANYONE, this::mark));
  }

  private void practices(Visit visit) {
    pages.show(visit, "marks/practices", text("page.marks.heading"), views.practices(false));
  }

  private void missing(Visit visit) {
    pages.showInstead(visit, "marks/practices", text("page.marks.missing"), views.practices(true));
  }

  private void marks(Visit visit) {
    Optional<Practice> practice = practice(visit);
    if (practice.isEmpty()) {
      missing(visit);
      return;
    }
    MarksView view = views.marks(practice.get(), Showing.of(visit));
    pages.show(visit, "marks/marks", text("page.marks.title", view.practice()), view);
  }

  private void poster(Visit visit) {
    Optional<Practice> practice = practice(visit);
    if (practice.isEmpty()) {
      missing(visit);
      return;
    }
    MarksView view = views.poster(practice.get(), Showing.of(visit));
    pages.show(visit, "marks/poster", text("page.poster.title", view.practice()), view);
  }

  private void mark(Visit visit) {
    Optional<Practice> practice = practice(visit);
    Optional<MarkDescription> mark =
        practice.flatMap(each -> each.mark(visit.context().pathParam("mark")));
    if (practice.isEmpty() || mark.isEmpty()) {
      missing(visit);
      return;
    }
    MarkView view = views.mark(practice.get(), mark.get(), Showing.of(visit));
    pages.show(visit, "marks/mark", text("page.mark.title", view.name(), view.practice()), view);
  }

  private void regions(Visit visit) {
    RegionsView view = views.regions(Showing.of(visit));
    pages.show(visit, "marks/regions", text("page.regions.heading"), view);
  }

  private static Optional<Practice> practice(Visit visit) {
    String asked = visit.context().pathParam("practice");
    return Practice.values().stream().filter(each -> each.id().equals(asked)).findFirst();
  }

  private String text(String key, Object... arguments) {
    return pages.wording().text(key, arguments);
  }
}
