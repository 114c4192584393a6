package withy.wording;

import withy.core.light.LightNotationException;

/** What a person reads of a light character that cannot be read. */
public final class LightFaults {
  private static final int SHOWN = 80;

  private LightFaults() {}

  /** What is wrong, in which text and where, on one line. */
  public static String sentence(LightNotationException fault, Wording words) {
    String what = oneLine(words.text(fault.reason().key(), fault.arguments().toArray()));
    return fault.place() == 0
        ? what
        : words.text("light.place", what, shown(fault.text()), String.valueOf(fault.place()));
  }

  private static String shown(String text) {
    return oneLine(text.length() > SHOWN ? text.substring(0, SHOWN) + "…" : text);
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\p{Cntrl}", " ");
  }
}
