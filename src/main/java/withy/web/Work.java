package withy.web;

/** What a route does for a visit that its guards let pass. */
@FunctionalInterface
public interface Work {
  /** Answers a visit; what it throws becomes a problem document or an error page. */
  void answer(Visit visit) throws Exception;
}
