package withy.web.pages.wall;

import java.util.List;
import java.util.Optional;
import withy.core.scenario.DrawnWaters;
import withy.core.scenario.SurveyedWater;
import withy.web.Declined;
import withy.web.Fault;
import withy.web.Json;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.PageRenderer;

/** The wall on which an instructor teaches a class with a stretch of water. */
public final class WallPages implements RouteGroup {
  private static final int OK = 200;

  private final PageRenderer pages;
  private final WallViews views;

  public WallPages(PageRenderer pages) {
    this.pages = pages;
    this.views = new WallViews(pages.wording());
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get(Shown.PATH, Role.INSTRUCTOR, this::show),
        Route.get(Shown.PATH + "/place", Role.INSTRUCTOR, this::place));
  }

  private void show(Visit visit) {
    WallView view = views.view(stretch(visit));
    pages.show(visit, "wall/wall", pages.wording().text("page.wall.title", view.title()), view);
  }

  private void place(Visit visit) {
    Stretch stretch = stretch(visit);
    Optional.ofNullable(stretch.shown().at())
        .map(at -> views.looked(stretch, at))
        .ifPresentOrElse(
            looked -> Json.answer(visit.context(), OK, looked),
            () -> {
              throw Declined.of(Fault.NOT_FOUND);
            });
  }

  private static Stretch stretch(Visit visit) {
    Shown shown = Shown.of(visit);
    SurveyedWater water =
        DrawnWaters.find(shown.water()).orElseThrow(() -> Declined.of(Fault.NOT_FOUND));
    return Stretch.of(shown, water);
  }
}
