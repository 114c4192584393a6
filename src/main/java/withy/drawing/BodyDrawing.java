package withy.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;
import withy.core.mark.Retroreflector;
import withy.core.mark.Structure;

/** Paints the body of a mark: its colours, a little light and shade, its outline, its letters. */
final class BodyDrawing implements Figure {
  private static final double OUTLINE = 1.8;

  private final Appearance appearance;
  private final BodyForm form;
  private final Surface surface;
  private final Coat coat;
  private final Emblem emblem;

  BodyDrawing(Appearance appearance) {
    this.appearance = appearance;
    this.form = BodyForm.of(appearance);
    this.surface = new Surface(form.profile());
    this.coat = Coat.of(appearance);
    this.emblem = new Emblem(appearance, surface);
  }

  @Override
  public double top() {
    return form.top() - (hasPost() ? MooringRing.HEIGHT : 0);
  }

  /** A lit mooring buoy has its lantern on a post through the ring. */
  private boolean hasPost() {
    return coat.isMooring() && appearance.light() != null;
  }

  @Override
  public double highest() {
    return emblem.highest(coat.isMooring());
  }

  @Override
  public double halfWidth() {
    return form.profile().halfWidth(0);
  }

  @Override
  public double heel() {
    return form.heel();
  }

  @Override
  public Footing footing() {
    boolean pile = appearance.structure() == Structure.PILE;
    return appearance.body() == BodyShape.BEACON && !pile
        ? Footing.ROCK
        : pile ? Footing.BED : Footing.WATER;
  }

  @Override
  public void paint(SvgWriter svg, @Nullable String label, List<Retroreflector> sheeting) {
    double top = form.top();
    double bottom = form.profile().bottom();
    if (coat.isMooring()) {
      MooringRing.draw(svg, top, hasPost(), false);
    }
    coat.paint(svg, surface, top, bottom);
    emblem.bands(svg);
    shade(svg, top, bottom);
    Pen.line(svg, surface.patch(-1, 1, top, bottom), Palette.INK, OUTLINE);
    fittings(svg);
    emblem.draw(svg, label != null);
    if (label != null) {
      letter(svg, label);
    }
    Sheeting.onBody(svg, surface, top, sheeting);
  }

  @Override
  public void silhouette(SvgWriter svg) {
    PathData body = surface.patch(-1, 1, form.top(), form.profile().bottom());
    svg.element("path", "d", body, "fill", Palette.SILHOUETTE);
    if (coat.isMooring()) {
      MooringRing.draw(svg, form.top(), hasPost(), true);
    }
    emblem.silhouette(svg);
  }

  private void shade(SvgWriter svg, double top, double bottom) {
    strip(svg, surface.patch(-0.86, -0.5, top, bottom), Palette.WHITE, 0.2);
    strip(svg, surface.patch(0.34, 1, top, bottom), Palette.INK, 0.13);
    strip(svg, surface.patch(0.74, 1, top, bottom), Palette.INK, 0.1);
    if (footing() == Footing.BED) {
      strip(svg, surface.patch(-1, 1, -7, bottom), Palette.INK, 0.25);
    }
  }

  private static void strip(SvgWriter svg, PathData patch, Palette fill, double opacity) {
    svg.element("path", "d", patch, "fill", fill, "fill-opacity", opacity);
  }

  /** The seams that tell a hull from a tower, a lid from a wall, a base from a shaft. */
  private void fittings(SvgWriter svg) {
    switch (appearance.body()) {
      case PILLAR -> {
        seam(svg, -27);
        seam(svg, -135);
      }
      case CAN, BARREL -> seam(svg, form.top() + 5);
      case CONICAL -> seam(svg, -13);
      case BEACON -> seam(svg, form.top() + (footing() == Footing.ROCK ? 8 : 4));
      case SPHERICAL, SPAR, DAYBOARD -> {}
    }
  }

  private void seam(SvgWriter svg, double y) {
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

  private void letter(SvgWriter svg, String label) {
    double y = emblem.letters(coat.letterHeight(form));
    Colour ground = coat.groundAt(y, form);
    double width = 2 * form.profile().halfWidth(y) * 0.86;
    double most = emblem.letterSize(coat.letterSize(form));
    double size = Math.min(most, width / (0.62 * Math.max(label.length(), 1)));
    Pen.bold(svg, label, new Vec(0, y), size, Palette.lettering(ground));
  }
}
