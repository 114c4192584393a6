package withy.web.pages.instructor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.measurement.ConceptSums;
import withy.core.measurement.LearnerState;
import withy.core.measurement.LearnerSums;
import withy.core.measurement.RapidAnswers;
import withy.usecase.Assignment;
import withy.usecase.ExplainChoice;
import withy.usecase.OwnStanding;
import withy.usecase.SchoolClass;
import withy.usecase.UseCases;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.GroundsWords;
import withy.web.pages.PageRenderer;

/** The page of a learner, which an instructor talks over with them; it compares nobody. */
public final class LearnerPages implements RouteGroup {
  private final PageRenderer pages;
  private final UseCases useCases;
  private final Phrases phrases;
  private final GroundsWords grounds;

  public LearnerPages(PageRenderer pages, UseCases useCases) {
    this.pages = pages;
    this.useCases = useCases;
    this.phrases = new Phrases(pages.wording());
    this.grounds = new GroundsWords(pages.wording());
  }

  @Override
  public List<Route> routes() {
    return List.of(Route.get("/classes/{id}/learners/{learner}", Role.INSTRUCTOR, this::show));
  }

  private void show(Visit visit) {
    String id = visit.context().pathParam("id");
    String learner = visit.context().pathParam("learner");
    SchoolClass own = useCases.openClass().of(visit.instructor(), id);
    LearnerSums sums = useCases.reviewClass().learner(visit.instructor(), id, learner);
    List<LearnerState> states =
        useCases.reviewClass().review(visit.instructor(), id).learners().stream()
            .filter(each -> each.learner().equals(sums.learner()))
            .sorted(Comparator.comparingDouble(LearnerState::knows))
            .toList();
    LearnerView view =
        new LearnerView(
            own.id(),
            own.name(),
            learner,
            sums.learner(),
            phrases.text("learner.base", sums.right(), sums.answers()),
            new AnswersBehind(own.id()).of(learner),
            effort(sums, new AnswersBehind(own.id()).rapid(learner)),
            useCases
                .explainChoice()
                .next(visit.instructor(), id, learner)
                .map(each -> next(each, sums.learner()))
                .orElse(null),
            rows(new Own(new AnswersBehind(own.id()), learner), states, sums));
    pages.show(visit, "review/learner", view.nickname(), view);
  }

  private String next(ExplainChoice.Next next, String nickname) {
    String concept = phrases.concept(next.grounds().concept());
    String why = grounds.toInstructor(next.grounds(), nickname);
    Assignment drill = next.drill();
    return drill == null
        ? phrases.text("next.in-any", concept, nickname, why)
        : phrases.text("next.in-drill", concept, phrases.title(drill), why);
  }

  private @Nullable Linked effort(LearnerSums sums, String behind) {
    int slow = sums.answers() - sums.rapid();
    boolean little = sums.answers() > 0 && slow < RapidAnswers.EFFORT * sums.answers();
    String said = phrases.text("learner.rapid", sums.rapid(), sums.answers());
    String says = phrases.text("learner.rapid-says", said, sums.learner());
    return little ? new Linked(said, says, behind) : null;
  }

  /** The learner's own answers, as the lists of them are addressed. */
  private record Own(AnswersBehind answers, String learner) {}

  private List<LearnerView.StandsRow> rows(Own own, List<LearnerState> states, LearnerSums sums) {
    List<LearnerView.StandsRow> rows = new ArrayList<>();
    for (LearnerState each : states) {
      ConceptSums concept = sums.concepts().get(each.concept());
      if (concept != null) {
        rows.add(row(own, each, concept));
      }
    }
    return rows;
  }

  private LearnerView.StandsRow row(Own own, LearnerState state, ConceptSums sums) {
    String belief = state.needsHelp() ? state.namedMisconception() : null;
    String concept = state.concept();
    String name = phrases.concept(concept);
    String all = own.answers().of(own.learner(), concept);
    return new LearnerView.StandsRow(
        concept,
        name,
        phrases.text("standing." + OwnStanding.State.of(state).id()),
        Phrases.exact(state.knows()),
        linked("learner.knows-says", phrases.percent(state.knows()), name, all),
        linked("learner.right-says", right(sums), name, all),
        linked(
            "learner.began-says", begun(sums), name, own.answers().firstOf(own.learner(), concept)),
        belief == null
            ? null
            : linked(
                "learner.believes-says",
                phrases.belief(belief),
                name,
                own.answers().led(own.learner(), concept, belief)));
  }

  private String right(ConceptSums sums) {
    int right = sums.answers() - sums.errors();
    return phrases.text("assignment.item-base", right, sums.answers());
  }

  private String begun(ConceptSums sums) {
    return phrases.text(sums.begunRight() ? "learner.began-right" : "learner.began-wrong");
  }

  private Linked linked(String key, String text, String concept, String behind) {
    return new Linked(text, phrases.text(key, text, concept), behind);
  }
}
