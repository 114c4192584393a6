package withy.exchange;

/**
 * Keeps a spreadsheet from taking a text for a formula: a cell that starts like one gets a single
 * quote in front, which is taken off again on reading. OWASP Application Security Verification
 * Standard 5.0, 1.2.10.
 *
 * <p>A text that itself starts with quotes and then like a formula gets one more, so that every
 * text comes back as it was.
 */
final class FormulaGuard {
  private static final char QUOTE = '\'';
  private static final String STARTS = "=+-@\t\r\n\0＝＋－＠";

  private FormulaGuard() {}

  static String put(String text) {
    return startsLikeFormula(text, 0) ? QUOTE + text : text;
  }

  static String take(String cell) {
    boolean guarded = !cell.isEmpty() && cell.charAt(0) == QUOTE && startsLikeFormula(cell, 1);
    return guarded ? cell.substring(1) : cell;
  }

  private static boolean startsLikeFormula(String text, int from) {
    int at = from;
    while (at < text.length() && text.charAt(at) == QUOTE) {
      at++;
    }
    return at < text.length() && STARTS.indexOf(text.charAt(at)) >= 0;
  }
}
