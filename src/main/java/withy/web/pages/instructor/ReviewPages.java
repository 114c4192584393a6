package withy.web.pages.instructor;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import withy.core.measurement.Belief;
import withy.core.measurement.ConceptError;
import withy.core.measurement.Review;
import withy.core.measurement.Verdict;
import withy.usecase.InstructorCaller;
import withy.usecase.ReviewClass;
import withy.usecase.SchoolClass;
import withy.usecase.Telling;
import withy.usecase.UseCases;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.PageRenderer;

/** The page on which an instructor reads what a class gets wrong. */
public final class ReviewPages implements RouteGroup {
  /** Items that show a belief, enough to talk it over. */
  private static final int TELLING = 3;

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
    Review review = reviewClass.review(instructor, id);
    ReviewViews.Reviewed reviewed =
        new ReviewViews.Reviewed(
            shown,
            review,
            reviewClass.silent(instructor, id),
            reviewClass.silence(instructor, id),
            reviewClass.latest(instructor, id),
            reviewClass.needs(instructor, id),
            reviewClass.beginnings(instructor, id),
            useCases.judgeReadiness().of(instructor, id),
            reviewClass.confusions(instructor, id),
            telling(instructor, id, review),
            useCases.showKind().answered(instructor, id),
            reviewClass.ids(instructor, id));
    String title = pages.wording().text("page.review.title", shown.name());
    pages.show(visit, "review/review", title, views.review(reviewed));
  }

  /** Of each concept that is not sound and has a belief behind it, the items that show it best. */
  private Map<String, List<Telling>> telling(
      InstructorCaller instructor, String id, Review review) {
    Map<String, List<Telling>> telling = new LinkedHashMap<>();
    for (ConceptError each : review.concepts()) {
      Belief belief = each.beliefBehind();
      if (belief != null && each.verdict() != Verdict.SOUND) {
        List<Telling> items =
            useCases
                .showEvidence()
                .telling(instructor, id, each.concept(), belief.misconception(), TELLING);
        if (!items.isEmpty()) {
          telling.put(each.concept(), items);
        }
      }
    }
    return telling;
  }
}
