package withy.core.measurement;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** What the learners of a class answered on one concept, by learner. */
final class ConceptAnswers {
  private final String concept;
  private final SortedMap<String, ConceptSums> learners = new TreeMap<>();
  private final SortedSet<String> misconceptions = new TreeSet<>();

  private ConceptAnswers(String concept) {
    this.concept = concept;
  }

  /** The answers on each concept, by its name. */
  static List<ConceptAnswers> of(Collection<LearnerSums> learners) {
    SortedMap<String, ConceptAnswers> concepts = new TreeMap<>();
    for (LearnerSums learner : learners) {
      learner
          .concepts()
          .forEach(
              (concept, sums) ->
                  concepts
                      .computeIfAbsent(concept, ConceptAnswers::new)
                      .add(learner.learner(), sums));
    }
    return List.copyOf(concepts.values());
  }

  private void add(String learner, ConceptSums sums) {
    learners.put(learner, sums);
    misconceptions.addAll(sums.states().beliefs().keySet());
  }

  List<LearnerState> states() {
    LearnerModel model = LearnerModel.of(List.copyOf(misconceptions));
    List<LearnerState> states = new ArrayList<>();
    learners.forEach((learner, sums) -> states.add(model.after(learner, concept, sums.states())));
    return states;
  }

  ConceptError error(int classSize, List<LearnerState> states) {
    ClassRate rate =
        ClassRate.of(learners.values().stream().map(ConceptSums::tally).toList(), classSize);
    return ConceptError.of(concept, rate, classSize, states);
  }
}
