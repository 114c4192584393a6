package withy.exchange;

import withy.core.response.ResponseFlaw;

/** The columns of a file of responses, in the order in which they are written. */
enum ResponseColumn {
  LEARNER("learner"),
  ASSIGNMENT("assignment"),
  ITEM("item"),
  FORM("form"),
  PRACTICE("practice"),
  CONCEPTS("concepts"),
  KEY("key"),
  OPTION("option"),
  MISCONCEPTION("misconception"),
  OFFERED("offered"),
  CORRECT("correct"),
  SHOWN_MS("shownMs"),
  ANSWERED_AT("answeredAt"),
  RAPID("rapid");

  private final String title;

  ResponseColumn(String title) {
    this.title = title;
  }

  /** Whether a file is read without it: no response of such a file was given rapidly. */
  boolean mayBeMissing() {
    return this == RAPID;
  }

  String title() {
    return title;
  }

  /** The column to mend. */
  static ResponseColumn of(ResponseFlaw flaw) {
    return switch (flaw) {
      case NO_LEARNER -> LEARNER;
      case NO_ITEM -> ITEM;
      case NO_FORM -> FORM;
      case NO_CONCEPT -> CONCEPTS;
      case NO_KEY, KEY_NOT_OFFERED -> KEY;
      case MALFORMED_OPTION, OPTION_TWICE, ONE_OPTION, KEY_WITH_MISCONCEPTION -> OFFERED;
      case OPTION_NOT_OFFERED -> OPTION;
      case CORRECT_WITHOUT_KEY, WRONG_WITH_KEY -> CORRECT;
      case MISCONCEPTION_WITHOUT_ERROR, MISCONCEPTION_OF_ANOTHER_OPTION -> MISCONCEPTION;
      case NEGATIVE_TIME -> SHOWN_MS;
    };
  }
}
