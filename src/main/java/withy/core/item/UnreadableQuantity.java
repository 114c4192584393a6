package withy.core.item;

/** Thrown where what was typed is no number in the unit that is asked for. */
public final class UnreadableQuantity extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** What is wrong with it. */
  public enum Flaw {
    /** It is empty, no plain number, or has more digits than any answer needs. */
    NO_NUMBER,
    /** What follows the number is not the unit. */
    OTHER_UNIT
  }

  private final Flaw flaw;

  UnreadableQuantity(Flaw flaw, String text) {
    super(flaw + ": \"" + text + "\"");
    this.flaw = flaw;
  }

  /** What is wrong. */
  public Flaw flaw() {
    return flaw;
  }
}
