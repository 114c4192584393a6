package withy.usecase;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * Lets instructors invite colleagues. All instructors of a server are one school: each has classes
 * of their own, and they may share drill sets.
 */
public final class InviteColleague {
  /** How long a code is good; long enough for a weekend between, no source. */
  public static final Duration GOOD_FOR = Duration.ofDays(7);

  /** Open invitations that one instructor can have. */
  public static final int MOST = 20;

  private final Instructors instructors;
  private final Invitations invitations;
  private final Passwords passwords;
  private final Clock clock;
  private final Secrets secrets;

  InviteColleague(Ports ports, Passwords passwords, Clock clock, Secrets secrets) {
    this.instructors = ports.instructors();
    this.invitations = ports.invitations();
    this.passwords = passwords;
    this.clock = clock;
    this.secrets = secrets;
  }

  /**
   * An invitation that was made.
   *
   * @param code shown this once, in groups of four; only its digest is kept
   */
  public record Invited(Invitation invitation, String code) {
    @Override
    public String toString() {
      return "Invited[" + invitation.id() + "]"; // the code belongs in no log
    }
  }

  /** All instructors of the school, by name. */
  public List<InstructorAccount> school() {
    return instructors.all();
  }

  /** The instructor's open invitations, the newest first. */
  public List<Invitation> open(InstructorCaller instructor) {
    Instant now = Moments.now(clock);
    return invitations.of(instructor.id()).stream().filter(each -> each.isOpen(now)).toList();
  }

  /**
   * Makes an invitation, whose code one colleague can take.
   *
   * @throws Refused TOO_MANY_INVITATIONS
   */
  public Invited invite(InstructorCaller instructor) {
    Instant now = Moments.now(clock);
    invitations.removeExpired(now);
    if (open(instructor).size() >= MOST) {
      throw new Refused(Reason.TOO_MANY_INVITATIONS, MOST);
    }
    String code = secrets.code(Codes.SET_UP_LENGTH);
    Invitation made = new Invitation(secrets.id(), instructor.id(), now, now.plus(GOOD_FOR));
    invitations.add(made, Secrets.digest(code));
    return new Invited(made, Codes.grouped(code));
  }

  /**
   * Withdraws one of the instructor's invitations.
   *
   * @throws Refused NO_INVITATION, also where it is another's or was taken
   */
  public void withdraw(InstructorCaller instructor, String id) {
    Invitation own =
        invitations.of(instructor.id()).stream()
            .filter(each -> each.id().equals(id))
            .findFirst()
            .orElseThrow(() -> new Refused(Reason.NO_INVITATION));
    invitations.remove(own.id());
  }

  /**
   * Makes the colleague an instructor of the school. Spaces, hyphens and letter case of the code do
   * not matter.
   *
   * @throws Refused WRONG_INVITATION, NAME_UNFIT, PASSWORD_UNFIT, NAME_TAKEN, BUSY
   */
  public InstructorAccount join(String typed, String name, String password) {
    Invitation taken =
        invitations
            .byCode(Secrets.digest(Codes.plain(typed)))
            .filter(each -> each.isOpen(Moments.now(clock)))
            .orElseThrow(() -> new Refused(Reason.WRONG_INVITATION));
    String fit = Names.name(name);
    InstructorAccount account =
        new InstructorAccount(secrets.id(), fit, passwords.hashNew(password));
    switch (invitations.take(taken, account, Names.folded(fit))) {
      case NAME_TAKEN -> throw new Refused(Reason.NAME_TAKEN);
      case GONE -> throw new Refused(Reason.WRONG_INVITATION);
      case JOINED -> {}
    }
    return account;
  }
}
