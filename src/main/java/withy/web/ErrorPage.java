package withy.web;

/** Shows a problem to a person. */
@FunctionalInterface
public interface ErrorPage {
  /** A whole HTML page that says what is wrong. */
  String html(Problem problem);
}
