package withy.core.response;

/** What can be wrong with a response, one constant for each thing that a response must keep to. */
public enum ResponseFlaw {
  /** Nobody gave it. */
  NO_LEARNER,
  /** It answers no item. */
  NO_ITEM,
  /** The form of the item is not said. */
  NO_FORM,
  /** It measures nothing, or the name of a concept is no plain word. */
  NO_CONCEPT,
  /** The right answer is not said. */
  NO_KEY,
  /**
   * An option offered has no value, or its value or misconception holds white space or an equals
   * sign.
   */
  MALFORMED_OPTION,
  /** The same option is offered twice. */
  OPTION_TWICE,
  /** One option alone is offered, which is no choice. */
  ONE_OPTION,
  /** The key is not among the options offered. */
  KEY_NOT_OFFERED,
  /** A misconception is said to lead to the key. */
  KEY_WITH_MISCONCEPTION,
  /** The option given is not among those offered. */
  OPTION_NOT_OFFERED,
  /** Said to be correct, and the option is not the key. */
  CORRECT_WITHOUT_KEY,
  /** Said to be wrong, and the option is the key. */
  WRONG_WITH_KEY,
  /** A misconception behind a correct answer or behind "not sure". */
  MISCONCEPTION_WITHOUT_ERROR,
  /** The misconception is not the one that the option given was offered with. */
  MISCONCEPTION_OF_ANOTHER_OPTION,
  /** The item was shown for less than no time. */
  NEGATIVE_TIME
}
