package withy.web;

import io.javalin.http.HandlerType;

/**
 * One row of the route table: a call, who may make it, and what is then done. Nothing is served
 * that is no row.
 *
 * @param path as the router reads it: {@code /api/assignments/{id}/next}
 */
public record Route(HandlerType method, String path, Role role, Work work) {

  /** A route to read from; it changes nothing. */
  public static Route get(String path, Role role, Work work) {
    return new Route(HandlerType.GET, path, role, work);
  }

  /** A route that changes something. */
  public static Route post(String path, Role role, Work work) {
    return new Route(HandlerType.POST, path, role, work);
  }

  /** Whom it speaks to. */
  public Surface surface() {
    return Surface.of(path);
  }

  /** Whether the call may change something. */
  public boolean changes() {
    return !method.equals(HandlerType.GET) && !method.equals(HandlerType.HEAD);
  }
}
