package withy.core.measurement;

import withy.core.response.Response;

/**
 * What one learner's answers to items of one form add up to.
 *
 * @param right how many of the answers were right
 * @param shownMillis how long the items were shown together
 */
public record FormSums(int answers, int right, long shownMillis) {
  static final FormSums NONE = new FormSums(0, 0, 0);

  FormSums plus(Response answer) {
    return new FormSums(
        answers + 1, right + (answer.correct() ? 1 : 0), shownMillis + answer.shownMillis());
  }

  /** What two learners add up to together. */
  public FormSums plus(FormSums others) {
    return new FormSums(
        answers + others.answers, right + others.right, shownMillis + others.shownMillis);
  }
}
