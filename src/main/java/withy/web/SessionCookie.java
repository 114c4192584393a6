package withy.web;

import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import withy.usecase.Session;

/**
 * The one cookie: an opaque session token that scripts of the page cannot read. The header is
 * written here in full, so that no attribute depends on another cookie of the response. It is not
 * {@code Secure}: browsers drop such a cookie on the plain http of a club's own network.
 */
final class SessionCookie {
  static final String NAME = "sid";

  private static final String ATTRIBUTES = "; Path=/; HttpOnly; SameSite=Lax; Max-Age=";

  private SessionCookie() {}

  static @Nullable String read(Context context) {
    return context.cookie(NAME);
  }

  static void give(Context context, Session session, Instant now) {
    long seconds = Math.max(0, Duration.between(now, session.expires()).toSeconds());
    context.res().addHeader("Set-Cookie", NAME + "=" + session.token() + ATTRIBUTES + seconds);
  }

  static void take(Context context) {
    context.res().addHeader("Set-Cookie", NAME + "=" + ATTRIBUTES + "0");
  }
}
