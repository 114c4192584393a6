package withy.web;

import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.usecase.Refused;

/** Thrown where a call cannot be answered as asked; becomes a problem document or an error page. */
public final class Declined extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Fault fault;
  private final transient List<Object> arguments;
  private final @Nullable String field;
  private final @Nullable Duration retryAfter;

  private Declined(
      Fault fault, List<Object> arguments, @Nullable String field, @Nullable Duration retryAfter) {
    super(fault.id(), null, false, false);
    this.fault = fault;
    this.arguments = List.copyOf(arguments);
    this.field = field;
    this.retryAfter = retryAfter;
  }

  /** Declined for a fault; the arguments fill the places of its detail. */
  public static Declined of(Fault fault, Object... arguments) {
    return new Declined(fault, List.of(arguments), fault.field(), null);
  }

  /** Declined because of one field of what was sent. */
  public static Declined field(Fault fault, String field) {
    return new Declined(fault, List.of(field), field, null);
  }

  /** Declined for now; the same call may do after a while. */
  public static Declined until(Fault fault, Duration retryAfter) {
    return new Declined(fault, List.of(seconds(retryAfter)), fault.field(), retryAfter);
  }

  /** Declined because a use case refused. */
  public static Declined of(Refused refused) {
    Fault fault = Fault.of(refused.reason());
    List<Object> details = refused.details();
    Object first = details.isEmpty() ? "" : details.get(0);
    if (first instanceof Duration wait) {
      return until(fault, wait);
    }
    if (fault == Fault.BUSY) {
      return until(fault, Duration.ofSeconds(1));
    }
    String field = fault == Fault.MALFORMED_FIELD ? first.toString() : fault.field();
    return new Declined(fault, details, field, null);
  }

  /** What is wrong. */
  public Fault fault() {
    return fault;
  }

  /** Fills the places of the detail. */
  public List<Object> arguments() {
    return arguments;
  }

  /** The field that is wrong, null where it is none. */
  public @Nullable String field() {
    return field;
  }

  /** Whole seconds to wait, at least 1; null where waiting does not help. */
  public @Nullable Long retryAfterSeconds() {
    return retryAfter == null ? null : seconds(retryAfter);
  }

  private static long seconds(Duration wait) {
    return Math.max(1, wait.plusMillis(999).toSeconds());
  }
}
