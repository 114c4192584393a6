package withy.drawing;

/** The one family of letters in pictures. */
final class Type {
  static final String FAMILY = "Helvetica,Arial,'Liberation Sans',sans-serif";

  private Type() {}
}
