package withy.web;

import java.util.Optional;
import withy.usecase.Session;

/** Finds the session of a token, if it still holds. */
@FunctionalInterface
public interface SessionFinder {
  Optional<Session> resume(String token);
}
