package withy.web.pages;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import withy.web.Visit;

/**
 * A secret that nobody keeps but who is shown it. It waits for the page that shows it in a cookie
 * of that page alone, and for a while only, so that it stands in no address and loading the page
 * again does not lose it.
 *
 * @param name of the cookie
 * @param path of the page
 */
public record ShownOnce(String name, String path) {
  private static final Duration SHOWN_FOR = Duration.ofMinutes(10);

  /** Leaves the secret for the page; it holds only what cookies bear. */
  public void give(Visit visit, String secret) {
    String cookie = name + "=" + secret + "; Path=" + path + "; HttpOnly; SameSite=Lax; Max-Age=";
    visit.context().res().addHeader("Set-Cookie", cookie + SHOWN_FOR.toSeconds());
  }

  /** The secret; null where there is none, or it is too late. */
  public @Nullable String read(Visit visit) {
    return visit.context().cookie(name);
  }
}
