package withy.usecase;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.Term;
import withy.core.drill.Grounds;
import withy.core.drill.NextConcept;
import withy.core.drill.Standing;
import withy.core.item.Concept;
import withy.core.item.ItemGenerator;
import withy.core.measurement.ConceptSums;
import withy.core.measurement.LearnerSums;
import withy.core.response.DrillKind;
import withy.core.response.Response;

/**
 * Says why a drill that follows a learner's answers asked what it asked, and what it would ask
 * next. Nothing of it is kept: the responses before an item was issued say it again at any time.
 */
public final class ExplainChoice {
  private final OpenClass openClass;
  private final Assignments assignments;
  private final IssuedItems issuedItems;
  private final Responses responses;
  private final ReviewClass reviewClass;
  private final Diagnoses diagnoses;
  private final Clock clock;

  ExplainChoice(OpenClass openClass, Ports ports, ReviewClass reviewClass, Clock clock) {
    this.openClass = openClass;
    this.assignments = ports.assignments();
    this.issuedItems = ports.issuedItems();
    this.responses = ports.responses();
    this.reviewClass = reviewClass;
    this.diagnoses = new Diagnoses(responses);
    this.clock = clock;
  }

  /**
   * What a learner would be asked about next.
   *
   * @param drill that would ask it; null where none is open to the learner, and it is what a drill
   *     on all that they have met would ask
   */
  public record Next(@Nullable Assignment drill, Grounds grounds) {}

  /**
   * Why an item that the learner answered was asked; empty where the drill asks everybody alike.
   *
   * @throws Refused UNKNOWN_ITEM; NOT_ANSWERED, since the grounds might hint at the answer
   */
  public Optional<Grounds> asked(LearnerCaller learner, String itemId) {
    Issue issue =
        issuedItems
            .find(itemId)
            .filter(found -> found.learner().equals(learner.id()))
            .orElseThrow(() -> new Refused(Reason.UNKNOWN_ITEM));
    if (responses.ofItem(itemId).isEmpty()) {
      throw new Refused(Reason.NOT_ANSWERED);
    }
    boolean follows = assignments.find(issue.assignment()).filter(this::follows).isPresent();
    return follows ? Optional.of(grounds(learner.nickname(), issue)) : Optional.empty();
  }

  private boolean follows(Assignment drill) {
    return drill.room() == null && drill.terms().kind() == DrillKind.ADAPTIVE;
  }

  private Grounds grounds(String nickname, Issue issue) {
    LearnerSums before = LearnerSums.none(nickname);
    for (Response each : responses.before(issue)) {
      before = before.plus(each);
    }
    return grounds(before, NextConcept.of(standing(before, issue.concept())));
  }

  private Standing standing(LearnerSums sums, Concept concept) {
    return new Standing(diagnoses.of(sums, concept));
  }

  private static Grounds grounds(LearnerSums sums, NextConcept chosen) {
    ConceptSums own = sums.concepts().get(chosen.concept());
    return own == null
        ? Grounds.of(chosen, 0, 0)
        : Grounds.of(chosen, own.answers(), own.answers() - own.errors());
  }

  /**
   * What a learner of a class would be asked next, in the newest drill that follows their answers
   * and is not done; empty where there is none and nothing was answered yet.
   *
   * @throws Refused UNKNOWN_CLASS, UNKNOWN_LEARNER
   */
  public Optional<Next> next(InstructorCaller instructor, String classId, String learner) {
    SchoolClass own = openClass.of(instructor, classId);
    LearnerSums sums = reviewClass.learner(instructor, own.id(), learner);
    Optional<Assignment> drill =
        assignments.of(own.id()).stream()
            .filter(each -> follows(each) && each.terms().isFor(learner))
            .filter(each -> each.terms().isOpen(clock.instant()))
            .filter(each -> responses.answered(learner, each.id()) < each.composition().length())
            .findFirst();
    return drill.isPresent() ? inDrill(own, drill.get(), learner, sums) : ofMet(sums);
  }

  private Optional<Next> inDrill(
      SchoolClass own, Assignment drill, String learner, LearnerSums sums) {
    Optional<Issue> open = issuedItems.open(learner, drill.id());
    if (open.isPresent()) {
      return Optional.of(new Next(drill, grounds(sums.learner(), open.get())));
    }
    List<Concept> all = ItemGenerator.measurable(own.practice(), drill.composition());
    return chosen(drill, sums, all, issuedItems.concepts(learner, drill.id()));
  }

  private Optional<Next> ofMet(LearnerSums sums) {
    List<Concept> met =
        sums.concepts().keySet().stream().map(each -> Term.parse(Concept.class, each)).toList();
    return chosen(null, sums, met, List.of());
  }

  private Optional<Next> chosen(
      @Nullable Assignment drill, LearnerSums sums, List<Concept> all, List<Concept> asked) {
    if (all.isEmpty()) {
      return Optional.empty();
    }
    List<Standing> standings = new ArrayList<>();
    all.forEach(each -> standings.add(standing(sums, each)));
    List<String> before = asked.stream().map(Term::id).toList();
    // among equals a drill leaves it to chance; a page says the same each time
    Chance same = Chance.of(0, before.size());
    return Optional.of(
        new Next(drill, grounds(sums, NextConcept.leastSettled(standings, before, same))));
  }
}
