package withy.core.drill;

import withy.core.Term;
import withy.core.drill.NextConcept.Why;

/**
 * Why a learner is asked about a concept, with the numbers of their own that say so in a sentence.
 *
 * @param concept its id
 * @param answers of the learner on it before, rapid ones among them, 0 or more
 * @param right 0 to answers
 */
public record Grounds(String concept, Kind kind, int answers, int right) {
  /** What the numbers show, where a choice has these grounds. */
  public enum Kind implements Term {
    /** It was not asked about before. */
    FIRST,
    /** Every answer came too fast to say anything. */
    HURRIED,
    /** Some answers were right and some were not, which leaves it open. */
    DISAGREEING,
    /** All were right, too few or too easy to settle it. */
    RIGHT_SO_FAR,
    /** None was right, too few to tell a slip from not knowing. */
    WRONG_SO_FAR,
    /** It is not known; what is believed instead is open. */
    BELIEF,
    /** It is not known, and practised. */
    UNKNOWN,
    /** All is known, and this one kept up. */
    KEPT_UP
  }

  /**
   * @throws IllegalArgumentException if more were right than were given
   */
  public Grounds {
    if (right < 0 || right > answers) {
      throw new IllegalArgumentException(right + " right of " + answers);
    }
  }

  /** The grounds of a choice. */
  public static Grounds of(NextConcept choice, int answers, int right) {
    return new Grounds(choice.concept(), kind(choice.why(), answers, right), answers, right);
  }

  /** How many answers were not right. */
  public int wrong() {
    return answers - right;
  }

  private static Kind kind(Why why, int answers, int right) {
    return switch (why) {
      case NEW -> answers == 0 ? Kind.FIRST : Kind.HURRIED;
      case UNSETTLED -> unsettled(answers, right);
      case BELIEF -> Kind.BELIEF;
      case UNKNOWN -> Kind.UNKNOWN;
      case KEPT_UP -> Kind.KEPT_UP;
    };
  }

  private static Kind unsettled(int answers, int right) {
    if (right == answers) {
      return Kind.RIGHT_SO_FAR;
    }
    return right == 0 ? Kind.WRONG_SO_FAR : Kind.DISAGREEING;
  }
}
