package withy.exchange;

import org.jspecify.annotations.Nullable;
import withy.wording.Wording;

/**
 * Thrown where a file of responses cannot be read; says the first thing to mend and where it is.
 */
public final class MalformedResponses extends Exception {
  private static final long serialVersionUID = 1L;
  private static final int LONGEST_TEXT = 60;

  private final long row;
  private final String column;
  private final String problem;
  private final String text;

  MalformedResponses(long row, @Nullable String column, String problem, String text) {
    super("row " + row + ", column " + column + ", " + problem + ": " + oneLine(text));
    this.row = row;
    this.column = column == null ? "" : column;
    this.problem = problem;
    this.text = oneLine(text);
  }

  /** The row, as a spreadsheet counts: the header is row 1; a blank row counts as well. */
  public long row() {
    return row;
  }

  /** The title of the column, or empty where the row as a whole is at fault. */
  public String column() {
    return column;
  }

  /** Where and what, as one line in the language of the words. */
  public String sentence(Wording words) {
    String what = words.text("responses.problem." + problem, text);
    String where = column.isEmpty() ? "responses.row" : "responses.row-and-column";
    return words.text(where, String.valueOf(row), column, what);
  }

  private static String oneLine(String text) {
    StringBuilder line = new StringBuilder();
    for (int at : text.codePoints().limit(LONGEST_TEXT).toArray()) {
      line.appendCodePoint(Character.isISOControl(at) ? ' ' : at);
    }
    return text.codePointCount(0, text.length()) > LONGEST_TEXT ? line + "…" : line.toString();
  }
}
