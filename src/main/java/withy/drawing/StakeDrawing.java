package withy.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.Retroreflector;
import withy.core.mark.Structure;

/** A withy or a stake with a besom, stuck into the mud beside a channel. */
final class StakeDrawing implements Figure {
  private static final double TOP = -120;
  private static final double WOOD = 3.4;
  private final Appearance appearance;

  StakeDrawing(Appearance appearance) {
    this.appearance = appearance;
  }

  @Override
  public double top() {
    return TOP;
  }

  @Override
  public double highest() {
    return TOP - 22;
  }

  @Override
  public double halfWidth() {
    return WOOD;
  }

  @Override
  public double heel() {
    return 1.5;
  }

  @Override
  public Footing footing() {
    return Footing.MUD;
  }

  @Override
  public void paint(SvgWriter svg, @Nullable String label, List<Retroreflector> sheeting) {
    wood(svg, Palette.INK, 1.6);
    wood(svg, Palette.TWIG, 0);
    band(svg);
    if (label != null) {
      plate(svg, label);
    }
  }

  @Override
  public void silhouette(SvgWriter svg) {
    wood(svg, Palette.SILHOUETTE, 0.8);
  }

  private void wood(SvgWriter svg, Palette ink, double edge) {
    PathData stem = PathData.at(0, 9).cubic(2, -30, -3, -70, 0.5, TOP);
    Pen.line(svg, stem, ink, 2 * WOOD + edge);
    Structure structure = appearance.structure();
    if (structure == Structure.WITHY) {
      Pen.line(svg, branches(), ink, 2.4 + edge);
      Pen.line(svg, twigs(), ink, 1.4 + edge);
    } else {
      Pen.line(svg, besom(structure == Structure.BROOM_UP), ink, 1.7 + edge);
    }
  }

  private static PathData branches() {
    return PathData.at(-0.5, -78)
        .cubic(-10, -88, -16, -98, -18, -116)
        .move(0, -92)
        .cubic(8, -100, 14, -108, 17, -126)
        .move(0.5, TOP)
        .cubic(2, -126, 3, -132, 1, TOP - 20);
  }

  private static PathData twigs() {
    return PathData.at(-13, -97)
        .quadratic(-20, -102, -27, -112)
        .move(-17, -108)
        .quadratic(-14, -116, -10, -126)
        .move(12, -108)
        .quadratic(19, -110, 26, -120)
        .move(0, -106)
        .quadratic(-6, -116, -6, -132)
        .move(1, -118)
        .quadratic(7, -124, 9, -137)
        .move(-0.8, -60)
        .quadratic(7, -66, 13, -76);
  }

  /** A bundle of twigs bound to the head of the stake, spreading up or down. */
  private static PathData besom(boolean up) {
    double bound = up ? -100 : TOP - 16;
    double spread = up ? -40 : 42;
    PathData twigs = new PathData();
    for (int i = -5; i <= 5; i++) {
      double end = bound + spread * (1 - 0.012 * i * i);
      twigs.move(i * 0.7, bound).quadratic(i * 1.4, bound + spread * 0.4, i * 4.6, end);
    }
    return twigs.move(-5.5, bound).line(5.5, bound).move(0, TOP).line(0, Math.min(bound, TOP));
  }

  /** The cloth or tape tied round, in the colours of the mark. */
  private void band(SvgWriter svg) {
    int count = appearance.colours().size();
    double height = 13;
    for (int i = 0; i < count; i++) {
      double y = -66 + i * height;
      PathData cloth =
          PathData.polygon(-5.2, y, 4.4, y - 0.6, 4.8, y + height, -5, y + height + 0.6);
      Pen.area(svg, cloth, Palette.of(appearance.colours().get(i)), Palette.INK, 1.3);
    }
    double knot = -66 + count * height;
    PathData ends =
        PathData.polygon(3, knot - 8, 14, knot - 3, 12, knot + 1, 17, knot + 5, 3, knot - 3);
    Pen.area(svg, ends, Palette.of(appearance.colours().get(count - 1)), Palette.INK, 1.2);
  }

  private static void plate(SvgWriter svg, String label) {
    double half = Math.max(10, label.length() * 4.5 + 3);
    Pen.area(svg, Polygon.box(-half, -44, half, -28).path(), Palette.WHITE, Palette.INK, 1.2);
    Pen.bold(svg, label, new Vec(0, -36), 12, Palette.BLACK);
  }
}
