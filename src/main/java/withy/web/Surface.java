package withy.web;

/** Whom a route speaks to, and so how it is guarded and how it says no. */
public enum Surface {
  /** Scripts: JSON, a token in a header, problem documents. */
  API,
  /** People: pages and forms, a token in a hidden field, error pages. */
  PAGE,
  /** Whoever runs the machine: plain text, problem documents. */
  SERVICE;

  /** The surface that a path belongs to. */
  public static Surface of(String path) {
    if (path.startsWith("/api/")) {
      return API;
    }
    boolean service =
        path.equals("/health") || path.equals("/metrics") || path.startsWith("/admin/");
    return service ? SERVICE : PAGE;
  }
}
