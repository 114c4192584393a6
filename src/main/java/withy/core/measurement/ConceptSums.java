package withy.core.measurement;

import java.time.Instant;
import withy.core.response.Response;

/**
 * What one learner's answers on one concept add up to.
 *
 * @param answers at least one
 * @param errors 0 to answers; "not sure" is one
 * @param begunRight whether the first of them was right
 * @param states without rapid answers
 * @param last when the latest was given
 */
public record ConceptSums(
    int answers, int errors, boolean begunRight, StateSums states, Instant last) {
  static ConceptSums first(Response answer) {
    ConceptSums none =
        new ConceptSums(0, 0, answer.correct(), LearnerModel.usualNoAnswers(), answer.answeredAt());
    return none.plus(answer);
  }

  ConceptSums plus(Response answer) {
    return new ConceptSums(
        answers + 1,
        errors + (answer.correct() ? 0 : 1),
        begunRight,
        answer.rapid() ? states : states.plus(answer),
        answer.answeredAt());
  }

  Tally tally() {
    return new Tally(answers, errors);
  }
}
