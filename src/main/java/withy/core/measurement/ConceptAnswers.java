package withy.core.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import withy.core.response.OfferedOption;
import withy.core.response.Response;

/** The first answers of a class that measure one concept, by learner. */
final class ConceptAnswers {
  private final String concept;
  private final SortedMap<String, List<Response>> learners = new TreeMap<>();
  private final SortedSet<String> misconceptions = new TreeSet<>();

  private ConceptAnswers(String concept) {
    this.concept = concept;
  }

  /** The answers of each concept, by its name. */
  static List<ConceptAnswers> of(List<Response> answers) {
    SortedMap<String, ConceptAnswers> concepts = new TreeMap<>();
    for (Response answer : answers) {
      concepts.computeIfAbsent(answer.measured(), ConceptAnswers::new).add(answer);
    }
    return List.copyOf(concepts.values());
  }

  private void add(Response answer) {
    learners.computeIfAbsent(answer.learner(), learner -> new ArrayList<>()).add(answer);
    for (OfferedOption option : answer.offered()) {
      addBelief(option.misconception());
    }
    addBelief(answer.misconception());
  }

  private void addBelief(@Nullable String misconception) {
    if (misconception != null && !misconception.equals(OfferedOption.UNEXPLAINED)) {
      misconceptions.add(misconception);
    }
  }

  List<LearnerState> states() {
    LearnerModel model = LearnerModel.of(List.copyOf(misconceptions));
    List<LearnerState> states = new ArrayList<>();
    learners.forEach((learner, answers) -> states.add(model.after(learner, concept, answers)));
    return states;
  }

  ConceptError error(int classSize, List<LearnerState> states) {
    ClassRate rate =
        ClassRate.of(learners.values().stream().map(ConceptAnswers::tally).toList(), classSize);
    return ConceptError.of(concept, rate, classSize, states);
  }

  private static Tally tally(List<Response> answers) {
    int right = (int) answers.stream().filter(Response::correct).count();
    return new Tally(answers.size(), answers.size() - right);
  }
}
