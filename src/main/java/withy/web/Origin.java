package withy.web;

import io.javalin.http.Context;
import java.net.URI;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Where a call that changes something comes from: a page of this server, or no page at all. */
final class Origin {
  private Origin() {}

  /**
   * Refuses what a page of another server sends. Browsers say the origin of every such call;
   * scripts say none.
   */
  static void requireOwn(Context context, Route route) {
    String origin = context.header("Origin");
    if (route.changes() && origin != null && !isOwn(origin, context.header("Host"))) {
      throw Declined.of(Fault.OTHER_ORIGIN);
    }
  }

  static boolean isOwn(String origin, @Nullable String host) {
    String authority = authority(origin);
    return host != null && authority != null && authority.equals(host.toLowerCase(Locale.ROOT));
  }

  private static @Nullable String authority(String origin) {
    try {
      String authority = URI.create(origin).getRawAuthority();
      return authority == null ? null : authority.toLowerCase(Locale.ROOT);
    } catch (IllegalArgumentException malformed) {
      return null;
    }
  }
}
