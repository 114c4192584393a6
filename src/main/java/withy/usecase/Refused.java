package withy.usecase;

import java.util.List;

/** Thrown where a use case does not do what it was asked, for a reason that a person can mend. */
public final class Refused extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Reason reason;
  private final transient List<Object> details;

  public Refused(Reason reason, Object... details) {
    super(reason.name());
    this.reason = reason;
    this.details = List.of(details);
  }

  /** Why. */
  public Reason reason() {
    return reason;
  }

  /** What the reason says it tells. */
  public List<Object> details() {
    return details;
  }
}
