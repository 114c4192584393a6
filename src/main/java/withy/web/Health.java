package withy.web;

import java.util.function.BooleanSupplier;

/** Whether the server can serve: it is not closing and its database answers. */
public final class Health {
  private final BooleanSupplier databaseAnswers;
  private volatile boolean closing;

  public Health(BooleanSupplier databaseAnswers) {
    this.databaseAnswers = databaseAnswers;
  }

  /** From now on it can not: it is about to stop. */
  void close() {
    closing = true;
  }

  boolean isGood() {
    return !closing && databaseAnswers.getAsBoolean();
  }
}
