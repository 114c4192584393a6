package withy.usecase;

import java.time.Clock;
import java.util.Optional;

/** Lets an instructor in, and whoever has a session in again. */
public final class SignIn {
  private final Instructors instructors;
  private final Passwords passwords;
  private final SessionKeeper sessions;
  private final Patience patience;

  public SignIn(
      Instructors instructors,
      Sessions sessions,
      Passwords passwords,
      Clock clock,
      Secrets secrets) {
    this.instructors = instructors;
    this.passwords = passwords;
    this.sessions = new SessionKeeper(sessions, clock, secrets);
    this.patience = new Patience(clock);
  }

  /**
   * A new session of the instructor. A session that the caller had before is to be signed out.
   *
   * @throws Refused WRONG_SIGN_IN, TOO_MANY_TRIES, BUSY
   */
  public Session signIn(String name, String password) {
    String folded = Names.folded(Names.title(name));
    patience.require(folded);
    Optional<InstructorAccount> account = instructors.byName(folded);
    if (account.isEmpty()) {
      passwords.matchNobody(password);
    }
    InstructorAccount right =
        account
            .filter(known -> passwords.matches(password, known.passwordHash()))
            .orElseThrow(() -> failed(folded));
    patience.succeeded(folded);
    renewHash(right, password);
    return sessions.open(new InstructorCaller(right.id(), right.name()));
  }

  private Refused failed(String folded) {
    patience.failed(folded);
    return new Refused(Reason.WRONG_SIGN_IN);
  }

  private void renewHash(InstructorAccount account, String password) {
    if (passwords.isOutdated(account.passwordHash())) {
      instructors.changePassword(account.id(), passwords.hash(password));
    }
  }

  /** The session of a token, an instructor's or a learner's; empty once it has ended. */
  public Optional<Session> resume(String token) {
    return sessions.resume(token);
  }

  /** Ends the session of a token; nothing happens if there is none. */
  public void signOut(String token) {
    sessions.close(token);
  }
}
