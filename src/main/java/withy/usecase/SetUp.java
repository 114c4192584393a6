package withy.usecase;

import java.util.Optional;

/** Makes the first instructor, who proves with a code to be the one who started the server. */
public final class SetUp {
  private final Instructors instructors;
  private final Passwords passwords;
  private final Secrets secrets;
  private final String code;

  public SetUp(Instructors instructors, Passwords passwords, Secrets secrets) {
    this.instructors = instructors;
    this.passwords = passwords;
    this.secrets = secrets;
    this.code = Codes.grouped(secrets.code(Codes.SET_UP_LENGTH));
  }

  /** Whether there is no instructor yet. */
  public boolean needed() {
    return instructors.isEmpty();
  }

  /** The code of this start; it is good for nothing once there is an instructor. */
  public String code() {
    return code;
  }

  /**
   * Makes the first instructor, who takes over the classes without one. Spaces, hyphens and letter
   * case of the code do not matter.
   *
   * @throws Refused WRONG_SET_UP_CODE, NAME_UNFIT, PASSWORD_UNFIT
   */
  public synchronized InstructorAccount setUp(String typed, String name, String password) {
    if (!Codes.same(typed, code) || !needed()) {
      throw new Refused(Reason.WRONG_SET_UP_CODE);
    }
    String fit = Names.name(name);
    InstructorAccount account =
        new InstructorAccount(secrets.id(), fit, passwords.hashNew(password));
    return Optional.of(account)
        .filter(first -> instructors.addFirst(first, Names.folded(fit)))
        .orElseThrow(() -> new Refused(Reason.WRONG_SET_UP_CODE));
  }
}
