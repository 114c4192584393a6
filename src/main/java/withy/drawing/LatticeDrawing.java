package withy.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.Retroreflector;

/** A beacon of open framework, clad with slats in the colours of the mark. */
final class LatticeDrawing implements Figure {
  private static final double TOP = -132;
  private static final double CLAD = -30;
  private static final double STEP = 6.8;
  private static final double SLAT = 4.6;

  private final Appearance appearance;
  private final Surface cage;

  LatticeDrawing(Appearance appearance) {
    this.appearance = appearance;
    this.cage = new Surface(Profile.from(13, TOP).line(22, CLAD));
  }

  @Override
  public double top() {
    return TOP;
  }

  @Override
  public double halfWidth() {
    return Framework.FOOT;
  }

  @Override
  public Footing footing() {
    return Footing.ROCK;
  }

  @Override
  public void paint(SvgWriter svg, @Nullable String label, List<Retroreflector> sheeting) {
    new Framework(svg, TOP).draw(y -> Palette.STEEL, true);
    Coat coat = Coat.of(appearance);
    for (double y = TOP + 5; y + SLAT < CLAD; y += STEP) {
      Pen.line(svg, cage.patch(-1, 1, y, y + SLAT), Palette.INK, 1.6);
      coat.paint(svg, cage, y, y + SLAT);
    }
    if (label != null) {
      plate(svg, label);
    }
    Sheeting.onBody(svg, cage, TOP, sheeting);
  }

  private static void plate(SvgWriter svg, String label) {
    double half = Math.max(12, label.length() * 5.5 + 4);
    Pen.area(svg, Polygon.box(-half, -62, half, -42).path(), Palette.WHITE, Palette.INK, 1.2);
    Pen.bold(svg, label, new Vec(0, -52), 15, Palette.BLACK);
  }

  @Override
  public void silhouette(SvgWriter svg) {
    new Framework(svg, TOP).draw(y -> Palette.SILHOUETTE, false);
    PathData slats = new PathData();
    for (double y = TOP + 5; y + SLAT < CLAD; y += STEP) {
      slats.append(cage.patch(-1, 1, y, y + SLAT));
    }
    svg.element("path", "d", slats, "fill", Palette.SILHOUETTE);
  }
}
