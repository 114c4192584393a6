package withy.drawing;

/** The one family of letters in pictures. */
final class Type {
  static final String FAMILY = "Helvetica,Arial,'Liberation Sans',sans-serif";

  private static final String NARROW = "iIjl.,:;|'!()[] ft-\u00a0";
  private static final String WIDE = "mMWw";

  private Type() {}

  /** About the width of some words, rather too wide than too narrow. */
  static double width(String words, double size, boolean bold) {
    double width = 0;
    for (int i = 0; i < words.length(); i++) {
      char each = words.charAt(i);
      if (NARROW.indexOf(each) >= 0) {
        width += 0.34;
      } else if (WIDE.indexOf(each) >= 0) {
        width += 0.9;
      } else {
        width += Character.isUpperCase(each) ? 0.72 : 0.56;
      }
    }
    return width * size * (bold ? 1.07 : 1);
  }
}
