package withy.drawing;

/**
 * A finished SVG element, ready to stand in a page unescaped; only this package makes one.
 *
 * @param text the element from {@code <svg} to {@code </svg>}
 */
public record Svg(String text) {
  @Override
  public String toString() {
    return text;
  }
}
