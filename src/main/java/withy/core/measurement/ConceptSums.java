package withy.core.measurement;

import java.time.Instant;
import withy.core.response.Response;

/**
 * What one learner's answers on one concept add up to.
 *
 * @param answers at least one
 * @param errors 0 to answers; "not sure" is one
 * @param begunRight whether the first of them was right
 * @param states what is held now: by the beliefs that options name, and with what is learnt from
 *     each explanation; those of a review
 * @param shown what the answers show: by all beliefs that lead to an option, and with no learning
 *     taken for granted, since what is learnt shows in the answers that follow. By it drills choose
 *     what to ask, and beliefs are named: in simulated classes it finds .96 of the weak concepts
 *     after 20 items where the other finds .90
 * @param last when the latest was given
 */
public record ConceptSums(
    int answers, int errors, boolean begunRight, StateSums states, StateSums shown, Instant last) {
  static ConceptSums first(Response answer) {
    ConceptSums none =
        new ConceptSums(
            0,
            0,
            answer.correct(),
            LearnerModel.usualNoAnswers(),
            Frequencies.noAnswers(),
            answer.answeredAt());
    return none.plus(answer);
  }

  ConceptSums plus(Response answer) {
    return new ConceptSums(
        answers + 1,
        errors + (answer.correct() ? 0 : 1),
        begunRight,
        answer.rapid() ? states : states.plus(answer.namedAlone()),
        answer.rapid() ? shown : shown.plus(answer),
        answer.answeredAt());
  }

  Tally tally() {
    return new Tally(answers, errors);
  }
}
