package withy.web;

import io.javalin.http.Context;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import withy.usecase.Caller;
import withy.usecase.InstructorCaller;
import withy.usecase.LearnerCaller;
import withy.usecase.Session;
import withy.usecase.SignIn;

/** One call to the server and who makes it; the guards have let it pass. */
public final class Visit {
  private final Context context;
  private final @Nullable Session session;
  private final Clock clock;

  Visit(Context context, @Nullable Session session, Clock clock) {
    this.context = context;
    this.session = session;
    this.clock = clock;
  }

  /** The request and the response. */
  public Context context() {
    return context;
  }

  /** The session of the caller, null where there is none. */
  public @Nullable Session session() {
    return session;
  }

  /** Who calls, null where nobody is signed in. */
  public @Nullable Caller caller() {
    return session == null ? null : session.caller();
  }

  /**
   * The token that a form of this session carries in its hidden field {@code token}; empty without
   * a session.
   */
  public String requestToken() {
    return session == null ? "" : session.requestToken();
  }

  /**
   * The learner who calls; routes for learners alone may ask.
   *
   * @throws Declined if it is somebody else
   */
  public LearnerCaller learner() {
    if (caller() instanceof LearnerCaller learner) {
      return learner;
    }
    throw Declined.of(Fault.WRONG_ROLE);
  }

  /**
   * The instructor who calls; routes for instructors alone may ask.
   *
   * @throws Declined if it is somebody else
   */
  public InstructorCaller instructor() {
    if (caller() instanceof InstructorCaller instructor) {
      return instructor;
    }
    throw Declined.of(Fault.WRONG_ROLE);
  }

  /** The address of the machine that calls, as the socket knows it; no header can change it. */
  public String address() {
    return context.req().getRemoteAddr();
  }

  /**
   * Gives the browser a session to come back with, in place of the one there may have been: a token
   * known before is worth nothing after.
   */
  public void begin(SignIn signIn, Session begun) {
    Session before = session();
    if (before != null) {
      signIn.signOut(before.token());
    }
    SessionCookie.give(context, begun, clock.instant());
  }

  /** Takes the session from the browser. */
  public void end() {
    SessionCookie.take(context);
  }

  /** Sends the browser on to another page after a form was taken (303 See Other). */
  public void goTo(String path) {
    context.redirect(path, io.javalin.http.HttpStatus.SEE_OTHER);
  }
}
