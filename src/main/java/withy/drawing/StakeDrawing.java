package withy.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.Retroreflector;
import withy.core.mark.Structure;

/** A withy or a stake with a besom, stuck into the mud beside a channel. */
final class StakeDrawing implements Figure {
  private static final double TOP = -120;
  private static final double BAND = -64;

  /** Where the bare wood below the twigs begins. */
  private static final double CLEAR = -92;

  private static final double WOOD = 3.2;
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
    return TOP - 24;
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
    wood(svg, Palette.INK, 1.3);
    wood(svg, Palette.TWIG, 0);
    band(svg);
    Sheeting.onBody(svg, new Surface(Profile.from(5, CLEAR).line(5, 0)), CLEAR, sheeting);
    if (label != null) {
      plate(svg, label);
    }
  }

  @Override
  public void silhouette(SvgWriter svg) {
    wood(svg, Palette.SILHOUETTE, 0.8);
  }

  private void wood(SvgWriter svg, Palette ink, double edge) {
    Structure structure = appearance.structure();
    if (structure == Structure.WITHY) {
      Pen.line(svg, twigs(), ink, 1.1 + edge);
      Pen.line(svg, branches(), ink, 2 + edge);
    } else {
      Pen.line(svg, besom(structure == Structure.BROOM_UP), ink, 1.5 + edge);
    }
    Pen.area(svg, stem(structure == Structure.WITHY), ink, ink, edge);
  }

  /** The stem, thinner towards its top; that of a withy bends a little as it grew. */
  private static PathData stem(boolean bent) {
    double b = bent ? 1 : 0;
    double tip = bent ? 0.8 : 2.6;
    return PathData.at(-WOOD, 9)
        .cubic(-WOOD + 3 * b, -30, -WOOD - 3 * b, -70, b - tip, TOP)
        .line(b + tip, TOP)
        .cubic(WOOD - 3 * b, -70, WOOD + 3 * b, -30, WOOD, 9)
        .close();
  }

  private static PathData branches() {
    return PathData.at(-1.4, -70)
        .cubic(-6, -82, -10, -94, -13, -116)
        .move(-1, -84)
        .cubic(4, -96, 9, -106, 13, -124)
        .move(0.6, TOP + 4)
        .cubic(1.4, -126, 2, -132, 1, TOP - 20);
  }

  private static PathData twigs() {
    return PathData.at(-9, -94)
        .quadratic(-15, -102, -20, -113)
        .move(-11.4, -106)
        .quadratic(-9.6, -114, -8, -128)
        .move(-13, -116)
        .quadratic(-14, -122, -17, -130)
        .move(7.6, -104)
        .quadratic(14, -109, 20, -119)
        .move(13, -124)
        .quadratic(14, -130, 13, -138)
        .move(-0.4, -104)
        .quadratic(-4, -116, -4, -134)
        .move(1, -112)
        .quadratic(6, -122, 7, -137)
        .move(1.2, -56)
        .quadratic(6, -64, 10, -74);
  }

  /** A bundle of twigs bound to the head of the stake, spreading up or down. */
  private static PathData besom(boolean up) {
    double bound = up ? -98 : TOP - 14;
    double spread = up ? -46 : 48;
    PathData twigs = new PathData();
    for (int i = -6; i <= 6; i++) {
      double end = bound + spread * (1 - 0.01 * i * i);
      twigs.move(i * 0.6, bound).quadratic(i * 1.3, bound + spread * 0.4, i * 4.2, end);
    }
    double tail = bound - spread * 0.16;
    for (int i = -2; i <= 2; i++) {
      twigs.move(i * 0.8, bound).line(i * 1.8, tail);
    }
    return twigs.move(-4.6, bound).line(4.6, bound);
  }

  /** The cloth or tape tied round, in the colours of the mark. */
  private void band(SvgWriter svg) {
    int count = appearance.colours().size();
    double height = 16;
    for (int i = 0; i < count; i++) {
      double y = BAND + i * height;
      PathData cloth = PathData.polygon(-6, y, 5.4, y - 0.8, 6, y + height, -5.6, y + height + 0.8);
      Pen.area(svg, cloth, Palette.of(appearance.colours().get(i)), Palette.INK, 1.3);
    }
    double knot = BAND + count * height;
    PathData ends =
        PathData.polygon(4, knot - 11, 17, knot - 5, 14, knot, 20, knot + 6, 4, knot - 3);
    Pen.area(svg, ends, Palette.of(appearance.colours().get(count - 1)), Palette.INK, 1.2);
  }

  private static void plate(SvgWriter svg, String label) {
    double half = Math.max(10, label.length() * 4.5 + 3);
    Pen.area(svg, Polygon.box(-half, -44, half, -28).path(), Palette.WHITE, Palette.INK, 1.2);
    Pen.bold(svg, label, new Vec(0, -36), 12, Palette.BLACK);
  }
}
