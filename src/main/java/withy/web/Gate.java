package withy.web;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import withy.usecase.Session;

/**
 * The guards before every route: where a call comes from, whose it is, whether that role may make
 * it, and whether a page of ours made it.
 */
final class Gate {
  /** The attribute under which a request knows the route that it took. */
  static final String ROUTE = "withy.route";

  private static final String TOKEN_HEADER = "X-Request-Token";
  private static final String TOKEN_FIELD = "token";

  private final SessionFinder sessions;
  private final Clock clock;

  Gate(SessionFinder sessions, Clock clock) {
    this.sessions = sessions;
    this.clock = clock;
  }

  /** The route as the router takes it. */
  Handler guarded(Route route) {
    return context -> {
      context.attribute(ROUTE, route);
      Origin.requireOwn(context, route);
      Session session = session(context);
      if (admits(context, route, session)) {
        requireToken(context, route, session);
        route.work().answer(new Visit(context, session, clock));
      }
    };
  }

  private @Nullable Session session(Context context) {
    String token = SessionCookie.read(context);
    return token == null || token.isEmpty() ? null : sessions.resume(token).orElse(null);
  }

  private static boolean admits(Context context, Route route, @Nullable Session session) {
    if (route.role().admits(session == null ? null : session.caller())) {
      return true;
    }
    if (session != null) {
      throw Declined.of(Fault.WRONG_ROLE);
    }
    if (route.surface() != Surface.PAGE) {
      throw Declined.of(Fault.NOT_SIGNED_IN);
    }
    context.redirect(route.role().entry(), io.javalin.http.HttpStatus.SEE_OTHER);
    return false;
  }

  private static void requireToken(Context context, Route route, @Nullable Session session) {
    if (session == null || !route.changes()) {
      return;
    }
    String sent = context.header(TOKEN_HEADER);
    if (sent == null && route.surface() == Surface.PAGE) {
      sent = context.formParam(TOKEN_FIELD);
    }
    if (sent == null || !same(sent, session.requestToken())) {
      throw Declined.of(Fault.NO_TOKEN);
    }
  }

  /** Compares in a time that does not tell how much is right. */
  private static boolean same(String sent, String expected) {
    byte[] one = sent.getBytes(StandardCharsets.UTF_8);
    return MessageDigest.isEqual(one, expected.getBytes(StandardCharsets.UTF_8));
  }
}
