package withy.usecase;

/** Why something asked for was refused. */
public enum Reason {
  /** The set-up code is wrong, or was used already. */
  WRONG_SET_UP_CODE,
  /** The code of the invitation is wrong, was used, withdrawn, or has expired. */
  WRONG_INVITATION,
  /** No such invitation, not this instructor's, or used already. */
  NO_INVITATION,
  /** The instructor has all the open invitations that one can have; the detail is how many. */
  TOO_MANY_INVITATIONS,
  /** Another instructor of the school has this name. */
  NAME_TAKEN,
  /** No instructor has this name and password. */
  WRONG_SIGN_IN,
  /** Too many failures in a row; the detail is the {@link java.time.Duration} to wait. */
  TOO_MANY_TRIES,
  /** More passwords are being checked than this machine bears; try again in a second. */
  BUSY,
  /** No class has this join code, or no learner this return code. */
  UNKNOWN_CODE,
  /** Somebody in the class has this nickname. */
  NICKNAME_TAKEN,
  /** A nickname that cannot be; the detail is the longest length in code points. */
  NICKNAME_UNFIT,
  /** The class has all the learners that it can have; the detail is how many. */
  CLASS_FULL,
  /** The instructor has all the classes that one can have; the detail is how many. */
  TOO_MANY_CLASSES,
  /** The instructor has all the waters that one can have; the detail is how many. */
  TOO_MANY_WATERS,
  /** The instructor has all the drill sets that one can have; the detail is how many. */
  TOO_MANY_DRILL_SETS,
  /** No such drill set, or one that this instructor may not see or change. */
  NO_DRILL_SET,
  /** No other instructor of the school has this id. */
  NO_COLLEAGUE,
  /** The instructor has all the courses that one can have; the detail is how many. */
  TOO_MANY_COURSES,
  /** No such course, or not this instructor's. */
  NO_COURSE,
  /** No such water, or not this instructor's. */
  UNKNOWN_WATER,
  /** No such class, or not this instructor's. */
  UNKNOWN_CLASS,
  /** No such assignment in the learner's class. */
  UNKNOWN_ASSIGNMENT,
  /** No such learner in the class. */
  UNKNOWN_LEARNER,
  /** The drill opens later; the detail is the {@link java.time.Instant} when. */
  NOT_OPEN,
  /** The drill would be due before it opens. */
  DUE_BEFORE_OPEN,
  /** No such item, not this learner's, or withdrawn. */
  UNKNOWN_ITEM,
  /** The item has no answer yet. */
  NOT_ANSWERED,
  /** The item was answered under another id. */
  ALREADY_ANSWERED,
  /** The learner used this id for the response to another item. */
  RESPONSE_ID_USED,
  /** The answered item came from an earlier generator that drew it otherwise. */
  OUTDATED_ITEM,
  /** The item offers no such option. */
  UNKNOWN_OPTION,
  /** What was typed is no number; the detail is the symbol of the unit that is asked for. */
  NO_NUMBER,
  /** The number is followed by another unit; the detail is the symbol of the right one. */
  OTHER_UNIT,
  /** A part is missing of the mark that is put together; the detail is the word for it. */
  INCOMPLETE_ANSWER,
  /** No drill set has this id. */
  UNKNOWN_DRILL_SET,
  /** A rehearsal without a water, or in one whose marks cannot be asked about. */
  NO_PASSAGE,
  /** The composition allows no item under the practice of the class. */
  NOTHING_TO_DRILL,
  /** The password is too short, too long or one of the first that anybody tries. */
  PASSWORD_UNFIT,
  /** A name or title that cannot be; the detail is the longest length in code points. */
  NAME_UNFIT,
  /** A value out of its range; the detail names the field. */
  MALFORMED,
  /** No copy of the database was made; the detail says why in one sentence. */
  COPY_REFUSED,
  /** The demonstration goes only where there is nothing yet. */
  NOT_EMPTY
}
