package withy.web.pages.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import withy.core.hydrography.DrawnWaters;
import withy.core.hydrography.SurveyedWater;
import withy.usecase.ListWaters.Listed;
import withy.usecase.UseCases;
import withy.web.Declined;
import withy.web.Fault;
import withy.web.Json;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.FieldProblem;
import withy.web.pages.PageRenderer;

/** The wall on which an instructor teaches a class with a stretch of water. */
public final class WallPages implements RouteGroup {
  private static final int OK = 200;
  private static final String TEMPLATE = "wall/wall";

  private final PageRenderer pages;
  private final UseCases useCases;
  private final WallViews views;
  private final RoomForms forms;

  public WallPages(PageRenderer pages, UseCases useCases) {
    this.pages = pages;
    this.useCases = useCases;
    this.views = new WallViews(pages.wording());
    this.forms = new RoomForms(pages.wording());
  }

  @Override
  public List<Route> routes() {
    List<Route> routes = new ArrayList<>();
    routes.add(Route.get(Shown.PATH, Role.INSTRUCTOR, this::show));
    routes.add(Route.get(Shown.PATH + "/place", Role.INSTRUCTOR, this::place));
    routes.addAll(new RoomPages(pages, useCases, this).routes());
    return routes;
  }

  private void show(Visit visit) {
    WallView view = view(visit, stretch(visit));
    pages.show(visit, TEMPLATE, title(view), view);
  }

  /** The wall with what is wrong about putting an item to the room. */
  void showAgain(Visit visit, Stretch stretch, List<FieldProblem> problems) {
    WallView view = view(visit, stretch);
    pages.showAgain(visit, TEMPLATE, title(view), view, problems);
  }

  private WallView view(Visit visit, Stretch stretch) {
    List<SurveyedWater> surveyed =
        useCases.listWaters().all(visit.instructor()).stream().map(Listed::water).toList();
    RoomForm room = forms.form(stretch, useCases.openClass().classes(visit.instructor()));
    return views.view(stretch, surveyed, room);
  }

  private String title(WallView view) {
    return pages.wording().text("page.wall.title", view.title());
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

  /** The water that is asked for, drawn or surveyed. */
  Stretch stretch(Visit visit) {
    Shown shown = Shown.of(visit);
    SurveyedWater water =
        DrawnWaters.find(shown.water())
            .orElseGet(() -> useCases.listWaters().one(visit.instructor(), shown.water()).water());
    return Stretch.of(shown, water);
  }
}
