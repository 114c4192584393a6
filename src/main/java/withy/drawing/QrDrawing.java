package withy.drawing;

import io.nayuki.qrcodegen.QrCode;

/** Text as a QR code (ISO/IEC 18004), dark on light with the quiet zone of four modules. */
public final class QrDrawing {
  private static final int QUIET = 4;

  private QrDrawing() {}

  /** The code of a text, readable with a seventh of it lost. */
  public static Svg of(String text) {
    QrCode code = QrCode.encodeText(text, QrCode.Ecc.MEDIUM);
    int side = code.size + 2 * QUIET;
    SvgWriter svg = SvgWriter.scaled(side, side);
    svg.element("rect", "width", side, "height", side, "fill", Palette.WHITE);
    svg.element("path", "d", modules(code), "fill", Palette.BLACK, "shape-rendering", "crispEdges");
    return svg.finish();
  }

  private static String modules(QrCode code) {
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < code.size; y++) {
      for (int x = 0; x < code.size; x++) {
        if (code.getModule(x, y)) {
          path.append('M').append(x + QUIET).append(' ').append(y + QUIET).append("h1v1h-1z");
        }
      }
    }
    return path.toString();
  }
}
