package withy.web;

import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import withy.usecase.Caller;
import withy.usecase.InstructorCaller;
import withy.usecase.LearnerCaller;

/** Who may take a route. */
public enum Role {
  ANYONE(caller -> true, "/"),
  SIGNED_IN(caller -> caller != null, "/"),
  LEARNER(LearnerCaller.class::isInstance, "/"),
  INSTRUCTOR(InstructorCaller.class::isInstance, "/sign-in");

  private final Predicate<@Nullable Caller> admits;
  private final String entry;

  Role(Predicate<@Nullable Caller> admits, String entry) {
    this.admits = admits;
    this.entry = entry;
  }

  /** Whether a caller, or nobody, has this role. */
  boolean admits(@Nullable Caller caller) {
    return admits.test(caller);
  }

  /** The page on which somebody gains this role. */
  String entry() {
    return entry;
  }
}
