package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.Retroreflector;

/** A beacon of open framework, clad with slats in the colours of the mark. */
final class LatticeDrawing implements Figure {
  private static final double TOP = -132;
  private static final double CLAD = -30;
  private static final double STEP = 8.2;
  private static final double SLAT = 5.8;

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
    List<double[]> slats = slats();
    Pen.line(svg, whole(slats), Palette.INK, 1.6);
    Coat.of(appearance)
        .slats(cage, slats)
        .forEach((colour, path) -> svg.element("path", "d", path, "fill", Palette.of(colour)));
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
    svg.element("path", "d", whole(slats()), "fill", Palette.SILHOUETTE);
  }

  /** The top and the bottom of each slat. */
  private static List<double[]> slats() {
    List<double[]> slats = new ArrayList<>();
    for (double y = TOP + 5; y + SLAT < CLAD; y += STEP) {
      slats.add(new double[] {y, y + SLAT});
    }
    return slats;
  }

  private PathData whole(List<double[]> slats) {
    PathData whole = new PathData();
    slats.forEach(each -> whole.append(cage.patch(-1, 1, each[0], each[1])));
    return whole;
  }
}
