package withy.web.pages.learner;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import withy.core.Term;
import withy.core.drill.Grounds;
import withy.core.item.Concept;
import withy.core.response.DrillKind;
import withy.usecase.Assignment;
import withy.usecase.Feedback;
import withy.usecase.IssuedItem;
import withy.usecase.LearnerCaller;
import withy.usecase.ListAssignments.OwnAssignment;
import withy.usecase.OwnStanding;
import withy.usecase.Reason;
import withy.usecase.Refused;
import withy.usecase.UseCases;
import withy.web.Declined;
import withy.web.Fault;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.Form;
import withy.web.pages.PageRenderer;

/** The pages that a learner reads: drills, the next item, and what came of an answer. */
public final class DrillPages implements RouteGroup {
  private final PageRenderer pages;
  private final UseCases useCases;
  private final Clock clock;
  private final DrillViews drills;
  private final FeedbackViews feedback;
  private final ItemPage itemPage;

  public DrillPages(PageRenderer pages, UseCases useCases, Clock clock) {
    this.pages = pages;
    this.useCases = useCases;
    this.clock = clock;
    this.drills = new DrillViews(pages);
    this.feedback = new FeedbackViews(pages.wording());
    this.itemPage = new ItemPage(pages, useCases, clock);
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/drills", Role.LEARNER, this::drills),
        Route.post("/readiness", Role.LEARNER, this::readiness),
        Route.post("/practice", Role.LEARNER, this::practise),
        Route.get("/drills/{assignment}", Role.LEARNER, this::next),
        Route.get("/drills/{assignment}/items/{item}", Role.LEARNER, this::feedback));
  }

  private void drills(Visit visit) {
    LearnerCaller learner = visit.learner();
    DrillsView view =
        drills.drills(
            useCases.openClass().of(learner).name(),
            useCases.listAssignments().of(learner),
            useCases.ownStanding().of(learner),
            useCases.practiseAlone().advice(learner).orElse(null),
            useCases.judgeReadiness().of(learner),
            clock.instant());
    pages.show(visit, "drill/drills", text("page.drills.heading"), view);
  }

  private void next(Visit visit) {
    OwnAssignment assignment = itemPage.assignment(visit);
    Optional<IssuedItem> item = useCases.nextItem().next(visit.learner(), assignment.id());
    if (item.isPresent()) {
      itemPage.show(visit, assignment, item.get());
    } else {
      EndView view = end(visit.learner(), assignment);
      pages.show(visit, "drill/end", view.heading(), view);
    }
  }

  private EndView end(LearnerCaller learner, OwnAssignment assignment) {
    List<OwnStanding.Standing> standing = useCases.ownStanding().of(learner);
    return assignment.kind() == DrillKind.READINESS
        ? drills.judged(assignment, standing, useCases.judgeReadiness().of(learner))
        : drills.end(assignment, standing);
  }

  private void readiness(Visit visit) {
    Assignment started =
        useCases.startReadiness().start(visit.learner(), text("page.readiness.title"));
    visit.goTo("/drills/" + started.id());
  }

  private void practise(Visit visit) {
    Concept concept;
    try {
      concept = Term.parse(Concept.class, Form.of(visit).text("concept"));
    } catch (IllegalArgumentException none) {
      throw Declined.of(Fault.NOT_FOUND);
    }
    String title = pages.wording().text("page.advice.title", pages.wording().name(concept));
    Assignment begun = useCases.practiseAlone().start(visit.learner(), concept, title);
    visit.goTo("/drills/" + begun.id());
  }

  private void feedback(Visit visit) {
    OwnAssignment assignment = itemPage.assignment(visit);
    String item = visit.context().pathParam("item");
    Feedback answered;
    try {
      answered = useCases.answerItem().feedback(visit.learner(), item);
    } catch (Refused refused) {
      if (refused.reason() == Reason.NOT_ANSWERED) {
        visit.goTo("/drills/" + assignment.id());
        return;
      }
      throw refused;
    }
    Grounds grounds = useCases.explainChoice().asked(visit.learner(), item).orElse(null);
    FeedbackView view = feedback.feedback(assignment, answered, grounds);
    pages.show(visit, "drill/feedback", view.verdict(), view);
  }

  private String text(String key) {
    return pages.wording().text(key);
  }
}
