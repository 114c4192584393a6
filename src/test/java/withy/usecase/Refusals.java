package withy.usecase;

import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** Says what is refused, and why. */
final class Refusals {
  private Refusals() {}

  static void assertRefused(Reason reason, ThrowingCallable call) {
    assertThatExceptionOfType(Refused.class)
        .isThrownBy(call)
        .extracting(Refused::reason)
        .isEqualTo(reason);
  }
}
