package withy.usecase;

import java.time.Clock;

/** Lets a learner into a class with its code, and back in with a code of the learner's own. */
public final class JoinClass {
  /** Learners that a class can have. */
  static final int MOST_LEARNERS = 60;

  private final SchoolClasses classes;
  private final Learners learners;
  private final SessionKeeper sessions;
  private final Secrets secrets;

  public JoinClass(
      SchoolClasses classes, Learners learners, Sessions sessions, Clock clock, Secrets secrets) {
    this.classes = classes;
    this.learners = learners;
    this.sessions = new SessionKeeper(sessions, clock, secrets);
    this.secrets = secrets;
  }

  /**
   * A learner who joined.
   *
   * @param returnCode shown this once, in groups of four; only its digest is kept
   */
  public record Joined(Learner learner, String returnCode, Session session) {
    @Override
    public String toString() {
      return "Joined[" + learner.id() + "]"; // the code belongs in no log
    }
  }

  /**
   * Makes a learner of the class with this code; letter case, spaces and hyphens in it do not
   * matter.
   *
   * @throws Refused UNKNOWN_CODE, NICKNAME_UNFIT, NICKNAME_TAKEN, CLASS_FULL
   */
  public Joined join(String code, String nickname) {
    SchoolClass joined =
        classes.byCode(Codes.plain(code)).orElseThrow(() -> new Refused(Reason.UNKNOWN_CODE));
    Learner learner = new Learner(secrets.id(), joined.id(), Names.nickname(nickname));
    String returnCode = secrets.code(Codes.RETURN_LENGTH);
    String folded = Names.folded(learner.nickname());
    switch (learners.add(learner, folded, Secrets.digest(returnCode), MOST_LEARNERS)) {
      case NICKNAME_TAKEN -> throw new Refused(Reason.NICKNAME_TAKEN);
      case CLASS_FULL -> throw new Refused(Reason.CLASS_FULL, MOST_LEARNERS);
      case ADDED -> {}
    }
    return new Joined(learner, Codes.grouped(returnCode), sessions.open(LearnerCaller.of(learner)));
  }

  /**
   * A new session of the learner with this return code.
   *
   * @throws Refused UNKNOWN_CODE
   */
  public Session comeBack(String returnCode) {
    return learners
        .byReturnCode(Secrets.digest(Codes.plain(returnCode)))
        .map(learner -> sessions.open(LearnerCaller.of(learner)))
        .orElseThrow(() -> new Refused(Reason.UNKNOWN_CODE));
  }
}
