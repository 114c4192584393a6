package withy.drawing;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes SVG text: the one place that prints markup, so that every text is escaped and every number
 * has a point whatever the locale.
 */
final class SvgWriter {
  static final String UNNAMED = "aria-hidden=\"true\"";

  private final StringBuilder out = new StringBuilder(4096);
  private final Deque<String> open = new ArrayDeque<>();

  private SvgWriter() {}

  /** A picture whose contents grow with the space that it is given. */
  static SvgWriter scaled(double width, double height) {
    return new SvgWriter()
        .root(width, height, " viewBox=\"0 0 " + number(width) + " " + number(height) + "\"");
  }

  /**
   * The part of a picture that lies in a box; its contents grow with the space that it is given.
   */
  static SvgWriter window(Box box) {
    String view = number(box.left()) + " " + number(box.top());
    String size = number(box.width()) + " " + number(box.height());
    return new SvgWriter()
        .root(box.width(), box.height(), " viewBox=\"" + view + " " + size + "\"");
  }

  /** A picture in CSS pixels: a larger space shows more room, its contents do not grow. */
  static SvgWriter unscaled(double width, double height) {
    return new SvgWriter().root(width, height, "");
  }

  private SvgWriter root(double width, double height, String viewBox) {
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" ").append(UNNAMED).append(viewBox);
    out.append(" width=\"").append(number(width)).append('"');
    out.append(" height=\"").append(number(height)).append("\">");
    open.push("svg");
    return this;
  }

  /** An element without contents; attributes are names and values in turn. */
  SvgWriter element(String name, Object... attributes) {
    start(name, attributes);
    out.append("/>");
    return this;
  }

  /** Opens an element that the matching {@link #end} closes. */
  SvgWriter begin(String name, Object... attributes) {
    start(name, attributes);
    out.append('>');
    open.push(name);
    return this;
  }

  SvgWriter end() {
    out.append("</").append(open.pop()).append('>');
    return this;
  }

  /** Words in the picture. */
  SvgWriter text(String words, Object... attributes) {
    return begin("text", attributes).words(words).end();
  }

  /** Words inside an element of letters that is open. */
  SvgWriter words(String words) {
    out.append(escaped(words));
    return this;
  }

  /** Closes all that is open. */
  Svg finish() {
    while (!open.isEmpty()) {
      end();
    }
    return new Svg(out.toString());
  }

  private void start(String name, Object... attributes) {
    out.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"").append(value(attributes[i + 1]));
      out.append('"');
    }
  }

  private static String value(Object value) {
    return value instanceof Number given ? number(given.doubleValue()) : escaped(value.toString());
  }

  /** At most two decimals, no sign on nought. */
  static String number(double value) {
    return decimal(value, 100);
  }

  /** A number cut to a step of one over the scale, a power of ten. */
  static String decimal(double value, long scale) {
    long steps = Math.round(value * scale);
    StringBuilder text = new StringBuilder(steps < 0 ? "-" : "");
    text.append(Math.abs(steps) / scale);
    long rest = Math.abs(steps) % scale;
    for (long unit = scale / 10; rest > 0; unit /= 10) {
      text.append(unit == scale / 10 ? "." : "").append(rest / unit);
      rest %= unit;
    }
    return text.toString();
  }

  /** Text that stands for itself, between tags as in an attribute. */
  static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    text.codePoints().forEach(each -> appendEscaped(safe, each));
    return safe.toString();
  }

  private static void appendEscaped(StringBuilder safe, int codePoint) {
    switch (codePoint) {
      case '<' -> safe.append("&lt;");
      case '>' -> safe.append("&gt;");
      case '&' -> safe.append("&amp;");
      case '"' -> safe.append("&quot;");
      case '\'' -> safe.append("&#39;");
      default -> safe.append(allowed(codePoint) ? Character.toString(codePoint) : "\uFFFD");
    }
  }

  /** The characters of XML 1.0, section 2.2. */
  private static boolean allowed(int codePoint) {
    return codePoint == '\t'
        || codePoint == '\n'
        || codePoint == '\r'
        || (codePoint >= 0x20 && codePoint <= 0xD7FF)
        || (codePoint >= 0xE000 && codePoint <= 0xFFFD)
        || codePoint >= 0x10000;
  }
}
