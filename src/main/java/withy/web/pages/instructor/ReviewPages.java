package withy.web.pages.instructor;

import java.util.List;
import withy.usecase.InstructorCaller;
import withy.usecase.ReviewClass;
import withy.usecase.SchoolClass;
import withy.usecase.UseCases;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.PageRenderer;

/** The page on which an instructor reads what a class gets wrong. */
public final class ReviewPages implements RouteGroup {
  private final PageRenderer pages;
  private final UseCases useCases;
  private final ReviewViews views;

  public ReviewPages(PageRenderer pages, UseCases useCases) {
    this.pages = pages;
    this.useCases = useCases;
    this.views = new ReviewViews(pages.wording(), useCases.composeDrill());
  }

  @Override
  public List<Route> routes() {
    return List.of(Route.get("/classes/{id}/review", Role.INSTRUCTOR, this::review));
  }

  private void review(Visit visit) {
    String id = visit.context().pathParam("id");
    SchoolClass shown = useCases.openClass().of(visit.instructor(), id);
    ReviewClass reviewClass = useCases.reviewClass();
    InstructorCaller instructor = visit.instructor();
    ReviewViews.Reviewed reviewed =
        new ReviewViews.Reviewed(
            shown,
            reviewClass.review(instructor, id),
            reviewClass.silent(instructor, id),
            reviewClass.needs(instructor, id),
            reviewClass.beginnings(instructor, id),
            useCases.judgeReadiness().of(instructor, id),
            reviewClass.confusions(instructor, id),
            reviewClass.ids(instructor, id));
    String title = pages.wording().text("page.review.title", shown.name());
    pages.show(visit, "review/review", title, views.review(reviewed));
  }
}
