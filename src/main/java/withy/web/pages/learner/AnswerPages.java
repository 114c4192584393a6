package withy.web.pages.learner;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import withy.usecase.Given;
import withy.usecase.IssuedItem;
import withy.usecase.LearnerCaller;
import withy.usecase.ListAssignments.OwnAssignment;
import withy.usecase.Refused;
import withy.usecase.UseCases;
import withy.web.Declined;
import withy.web.Fault;
import withy.web.Limits;
import withy.web.Metrics;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.FieldProblem;
import withy.web.pages.Form;
import withy.web.pages.PageRenderer;

/** Takes a learner's answers, or asks again where one cannot be taken. */
public final class AnswerPages implements RouteGroup {
  private final UseCases useCases;
  private final Limits limits;
  private final Metrics metrics;
  private final Clock clock;
  private final ItemPage itemPage;
  private final Problems problems;

  public AnswerPages(
      PageRenderer pages, UseCases useCases, Limits limits, Metrics metrics, Clock clock) {
    this.useCases = useCases;
    this.limits = limits;
    this.metrics = metrics;
    this.clock = clock;
    this.itemPage = new ItemPage(pages, useCases, clock);
    this.problems = new Problems(pages.wording());
  }

  @Override
  public List<Route> routes() {
    return List.of(Route.post("/drills/{assignment}/answers", Role.LEARNER, this::answer));
  }

  private void answer(Visit visit) {
    limits.response(visit.learner().id());
    Form form = Form.of(visit);
    OwnAssignment assignment = itemPage.assignment(visit);
    String item = form.text("item");
    TypedAnswer typed = TypedAnswer.of(form);
    if (typed.isNothing() || typed.saysTwoThings()) {
      askAgain(visit, form, assignment, each -> problems.missing(each, typed));
      return;
    }
    try {
      take(visit.learner(), form, item, typed.given());
      visit.goTo(feedbackOf(assignment, item));
    } catch (Refused refused) {
      settle(visit, form, refused, assignment);
    }
  }

  private void take(LearnerCaller learner, Form form, String item, @Nullable Given given) {
    UUID response = response(form);
    long shown = shownMillis(form);
    if (!useCases.answerItem().answer(learner, response, item, given, shown).repeated()) {
      metrics.count("answers");
    }
  }

  /** An item that was answered before shows what came of it; one that is gone, the next. */
  private void settle(Visit visit, Form form, Refused refused, OwnAssignment assignment) {
    switch (refused.reason()) {
      case ALREADY_ANSWERED -> visit.goTo(feedbackOf(assignment, form.text("item")));
      case UNKNOWN_OPTION -> visit.goTo("/drills/" + assignment.id());
      case NO_NUMBER, OTHER_UNIT -> {
        Object unit = refused.details().get(0);
        askAgain(visit, form, assignment, i -> problems.unreadable(refused.reason(), unit));
      }
      case INCOMPLETE_ANSWER ->
          askAgain(visit, form, assignment, i -> problems.missing(i, TypedAnswer.of(form)));
      default -> throw refused;
    }
  }

  private void askAgain(
      Visit visit,
      Form form,
      OwnAssignment assignment,
      Function<IssuedItem, List<FieldProblem>> wrong) {
    Optional<IssuedItem> item = useCases.nextItem().next(visit.learner(), assignment.id());
    if (item.isEmpty() || !item.get().id().equals(form.text("item"))) {
      visit.goTo("/drills/" + assignment.id());
      return;
    }
    TypedAnswer typed = TypedAnswer.of(form);
    List<FieldProblem> problems = wrong.apply(item.get());
    itemPage.showAgain(visit, assignment, item.get(), form.text("response"), typed, problems);
  }

  private static String feedbackOf(OwnAssignment assignment, String item) {
    return "/drills/" + assignment.id() + "/items/" + item;
  }

  private static UUID response(Form form) {
    try {
      return UUID.fromString(form.text("response"));
    } catch (IllegalArgumentException malformed) {
      throw Declined.field(Fault.MALFORMED_FIELD, "response");
    }
  }

  /** As the script measured it, else from the time at which the page was made. */
  private long shownMillis(Form form) {
    long measured = number(form.text("shownMs"));
    if (measured >= 0) {
      return measured;
    }
    long since = number(form.text("shownAt"));
    return since < 0 ? 0 : Math.max(0, clock.millis() - since);
  }

  private static long number(String typed) {
    try {
      return Long.parseLong(typed);
    } catch (NumberFormatException none) {
      return -1;
    }
  }
}
