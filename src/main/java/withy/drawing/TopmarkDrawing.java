package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import withy.core.mark.Colour;
import withy.core.mark.Topmark;
import withy.core.mark.TopmarkShape;

/** What a mark carries above its body, on a staff that shows between its parts. */
final class TopmarkDrawing {
  static final double CONE_WIDTH = 28;
  static final double CONE_HEIGHT = 24;

  /** Clear room between two cones or spheres, and below the lowest, outlines not counted. */
  static final double GAP = 7;

  static final double OUTLINE = 1.6;
  static final double STAFF = 2.6;
  private static final double SPHERE = 12.5;

  /** One solid of a topmark: its outline and the part of it that lies in the shade. */
  private record Solid(PathData outline, PathData shade, double top) {}

  private TopmarkDrawing() {}

  /** Draws a topmark whose staff stands at a height; silhouette drops its colours. */
  static void draw(SvgWriter svg, Topmark topmark, double foot, boolean silhouette) {
    List<Solid> solids = solids(topmark.shape(), foot - GAP - OUTLINE);
    double top = solids.get(solids.size() - 1).top();
    svg.element(
        "path",
        "d",
        PathData.line(0, foot + 1, 0, top + (topmark.shape() == TopmarkShape.X ? 14 : 4)),
        "stroke",
        silhouette ? Palette.SILHOUETTE : Palette.INK,
        "stroke-width",
        STAFF);
    for (int i = 0; i < solids.size(); i++) {
      int fromTop = solids.size() - 1 - i;
      Colour colour = topmark.colours().get(Math.min(fromTop, topmark.colours().size() - 1));
      if (silhouette) {
        flat(svg, solids.get(i));
      } else {
        solid(svg, solids.get(i), Palette.of(colour));
      }
    }
  }

  /** From the foot of the staff to the top of the topmark. */
  static double height(TopmarkShape shape) {
    List<Solid> solids = solids(shape, -GAP - OUTLINE);
    return -solids.get(solids.size() - 1).top();
  }

  private static void flat(SvgWriter svg, Solid solid) {
    svg.element("path", "d", solid.outline(), "fill", Palette.SILHOUETTE);
  }

  private static void solid(SvgWriter svg, Solid solid, Palette fill) {
    svg.element("path", "d", solid.outline(), "fill", fill);
    svg.element(
        "path",
        "d",
        solid.shade(),
        "fill",
        fill == Palette.BLACK ? Palette.WHITE : Palette.INK,
        "fill-opacity",
        fill == Palette.BLACK ? 0.1 : 0.15);
    svg.element(
        "path",
        "d",
        solid.outline(),
        "fill",
        "none",
        "stroke",
        Palette.INK,
        "stroke-width",
        OUTLINE,
        "stroke-linejoin",
        "round");
  }

  /** The solids from the lowest up; the lowest stands at a height. */
  private static List<Solid> solids(TopmarkShape shape, double foot) {
    return switch (shape) {
      case CAN -> List.of(can(foot));
      case CONE_UP -> List.of(cone(foot, true));
      case CONE_DOWN -> List.of(cone(foot, false));
      case SPHERE -> List.of(sphere(foot, 13.5));
      case TWO_SPHERES -> pair(sphere(foot, SPHERE), sphere(next(foot, 2 * SPHERE), SPHERE));
      case TWO_CONES_UP -> cones(foot, true, true);
      case TWO_CONES_DOWN -> cones(foot, false, false);
      case TWO_CONES_BASE_TO_BASE -> cones(foot, false, true);
      case TWO_CONES_POINT_TO_POINT -> cones(foot, true, false);
      case X -> List.of(saltire(foot));
      case UPRIGHT_CROSS -> List.of(cross(foot));
    };
  }

  private static List<Solid> cones(double foot, boolean lowerUp, boolean upperUp) {
    return pair(cone(foot, lowerUp), cone(next(foot, CONE_HEIGHT), upperUp));
  }

  private static double next(double foot, double height) {
    return foot - height - GAP - OUTLINE;
  }

  private static List<Solid> pair(Solid lower, Solid upper) {
    List<Solid> solids = new ArrayList<>();
    solids.add(lower);
    solids.add(upper);
    return solids;
  }

  private static Solid cone(double foot, boolean up) {
    double w = CONE_WIDTH / 2;
    double top = foot - CONE_HEIGHT;
    double base = up ? foot : top;
    double point = up ? top : foot;
    return new Solid(
        PathData.polygon(-w, base, w, base, 0, point),
        PathData.polygon(w * 0.3, base, w, base, 0, point),
        top);
  }

  private static Solid can(double foot) {
    double w = 12;
    double top = foot - 26;
    return new Solid(
        PathData.polygon(-w, foot, w, foot, w, top, -w, top),
        PathData.polygon(w * 0.3, foot, w, foot, w, top, w * 0.3, top),
        top);
  }

  private static Solid sphere(double foot, double radius) {
    double y = foot - radius;
    PathData shade =
        PathData.at(radius * 0.35, y - radius * 0.937)
            .arc(radius, radius * 0.35, y + radius * 0.937)
            .quadratic(radius * 0.75, y, radius * 0.35, y - radius * 0.937)
            .close();
    return new Solid(PathData.circle(0, y, radius), shade, foot - 2 * radius);
  }

  /** An X of two crossed arms, 28 across, arms 7 wide. */
  private static Solid saltire(double foot) {
    double c = foot - 14;
    double r = 14;
    double a = 7 / StrictMath.sqrt(2);
    PathData outline =
        PathData.polygon(
            -r, c - r + a, -r + a, c - r, 0, c - a, r - a, c - r, r, c - r + a, a, c, r, c + r - a,
            r - a, c + r, 0, c + a, -r + a, c + r, -r, c + r - a, -a, c);
    PathData shade = PathData.polygon(0, c + a, a, c, r, c + r - a, r - a, c + r);
    return new Solid(outline, shade, foot - 28);
  }

  private static Solid cross(double foot) {
    double c = foot - 15;
    double r = 15;
    double a = 3.75;
    PathData outline =
        PathData.polygon(
            -a, c - r, a, c - r, a, c - a, r, c - a, r, c + a, a, c + a, a, c + r, -a, c + r, -a,
            c + a, -r, c + a, -r, c - a, -a, c - a);
    PathData shade = PathData.polygon(a, c - a, r, c - a, r, c + a, a, c + a);
    return new Solid(outline, shade, foot - 30);
  }
}
