package withy.web;

import java.util.List;

/** Some routes that belong together. */
public interface RouteGroup {
  /** The routes, each with who may take it. */
  List<Route> routes();
}
