package withy.drawing;

/**
 * A finished SVG element, ready to stand in a page unescaped; only this package makes one.
 *
 * <p>As drawn it is hidden from assistive technology, since it has no name; {@link #named} gives it
 * one.
 *
 * @param text the element from {@code <svg} to {@code </svg>}
 */
public record Svg(String text) {
  /** The same picture as an image with an accessible name, which must not tell an answer. */
  public Svg named(String name) {
    String shown = "role=\"img\" aria-label=\"" + SvgWriter.escaped(name) + "\"";
    return new Svg(text.replaceFirst(SvgWriter.UNNAMED, quoted(shown)));
  }

  private static String quoted(String replacement) {
    return java.util.regex.Matcher.quoteReplacement(replacement);
  }

  @Override
  public String toString() {
    return text;
  }
}
