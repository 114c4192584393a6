package withy.web.pages.learner;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import withy.usecase.IssuedItem;
import withy.usecase.ListAssignments.OwnAssignment;
import withy.usecase.UseCases;
import withy.web.Visit;
import withy.web.pages.FieldProblem;
import withy.web.pages.PageRenderer;

/** The page of one item, as it is asked and as it is asked again. */
final class ItemPage {
  private static final String TEMPLATE = "drill/item";
  private static final String STILL = "still";

  private final PageRenderer pages;
  private final UseCases useCases;
  private final Clock clock;
  private final ItemViews views;

  ItemPage(PageRenderer pages, UseCases useCases, Clock clock) {
    this.pages = pages;
    this.useCases = useCases;
    this.clock = clock;
    this.views = new ItemViews(pages.wording());
  }

  /** The learner's own drill that the page is about; an item of the room also once it is closed. */
  OwnAssignment assignment(Visit visit) {
    String id = visit.context().pathParam("assignment");
    return useCases.listAssignments().one(visit.learner(), id);
  }

  void show(Visit visit, OwnAssignment assignment, IssuedItem item) {
    String response = UUID.randomUUID().toString();
    ItemView view = view(visit, assignment, item, response, TypedAnswer.NONE);
    pages.show(visit, TEMPLATE, title(view), view);
  }

  /** With what was typed, and what is wrong with it. */
  void showAgain(
      Visit visit,
      OwnAssignment assignment,
      IssuedItem item,
      String responseId,
      TypedAnswer typed,
      List<FieldProblem> problems) {
    ItemView view = view(visit, assignment, item, responseId, typed);
    pages.showAgain(visit, TEMPLATE, title(view), view, problems);
  }

  private ItemView view(
      Visit visit,
      OwnAssignment assignment,
      IssuedItem item,
      String responseId,
      TypedAnswer typed) {
    boolean still = STILL.equals(visit.context().queryParam("light"));
    return views.item(assignment, item, responseId, clock.millis(), still, typed);
  }

  private String title(ItemView view) {
    return pages.wording().text("page.item.title", view.title(), view.place());
  }
}
