package withy.core.response;

/** Thrown where a response contradicts itself or leaves out what it must say. */
public final class InvalidResponse extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final ResponseFlaw flaw;
  private final String text;

  InvalidResponse(ResponseFlaw flaw, String text) {
    super(flaw + ": \"" + text + "\"");
    this.flaw = flaw;
    this.text = text;
  }

  /** What is wrong. */
  public ResponseFlaw flaw() {
    return flaw;
  }

  /** The text that is wrong. */
  public String text() {
    return text;
  }
}
