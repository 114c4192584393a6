package withy.drawing;

import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;

/** Paints the body of a mark: its colours, a little light and shade, its outline, its letters. */
final class BodyDrawing {
  private static final double OUTLINE = 1.8;

  private final SvgWriter svg;
  private final Appearance appearance;
  private final BodyForm form;
  private final Surface surface;

  BodyDrawing(SvgWriter svg, Appearance appearance) {
    this.svg = svg;
    this.appearance = appearance;
    this.form = BodyForm.of(appearance.body());
    this.surface = new Surface(form.profile());
  }

  /** The body in its colours. */
  void paint(@Nullable String label) {
    double top = form.top();
    double bottom = form.profile().bottom();
    Coat.of(appearance).paint(svg, surface);
    shade(top, bottom);
    outline(top, bottom);
    fittings();
    if (label != null) {
      letter(label);
    }
  }

  /** The body as one dark shape. */
  void silhouette() {
    svg.element(
        "path",
        "d",
        surface.patch(-1, 1, form.top(), form.profile().bottom()),
        "fill",
        Palette.SILHOUETTE);
  }

  private void shade(double top, double bottom) {
    strip(-0.86, -0.5, top, bottom, Palette.WHITE, 0.2);
    strip(0.34, 1, top, bottom, Palette.INK, 0.13);
    strip(0.74, 1, top, bottom, Palette.INK, 0.1);
  }

  private void strip(
      double left, double right, double top, double bottom, Palette fill, double opacity) {
    svg.element(
        "path",
        "d",
        surface.patch(left, right, top, bottom),
        "fill",
        fill,
        "fill-opacity",
        opacity);
  }

  private void outline(double top, double bottom) {
    svg.element(
        "path",
        "d",
        surface.patch(-1, 1, top, bottom),
        "fill",
        "none",
        "stroke",
        Palette.INK,
        "stroke-width",
        OUTLINE,
        "stroke-linejoin",
        "round");
  }

  /** The seams that tell a hull from a tower and a lid from a wall. */
  private void fittings() {
    if (appearance.body() == BodyShape.PILLAR) {
      seam(-27);
      seam(-135);
    } else if (appearance.body() == BodyShape.CAN || appearance.body() == BodyShape.BARREL) {
      seam(form.top() + 5);
    } else if (appearance.body() == BodyShape.CONICAL) {
      seam(-13);
    }
  }

  private void seam(double y) {
    svg.element(
        "path",
        "d",
        surface.ring(y),
        "fill",
        "none",
        "stroke",
        Palette.INK,
        "stroke-width",
        0.9,
        "stroke-opacity",
        0.55);
  }

  private void letter(String label) {
    Coat coat = Coat.of(appearance);
    double y = coat.letterHeight(form);
    Colour ground = coat.groundAt(y, form);
    double width = 2 * form.profile().halfWidth(y) * 0.86;
    double size = Math.min(coat.letterSize(form), width / (0.62 * Math.max(label.length(), 1)));
    svg.text(
        label,
        "x",
        0,
        "y",
        y + size * 0.36,
        "font-size",
        size,
        "font-weight",
        700,
        "font-family",
        Type.FAMILY,
        "text-anchor",
        "middle",
        "fill",
        Palette.lettering(ground));
  }
}
