package withy.drawing;

import withy.core.geometry.Bearing;
import withy.core.light.Elevation;
import withy.core.scenario.RangeLookout;

/**
 * A light and an eye on either side of the curve of the earth, which the line of sight just
 * touches; not to scale, and the same whatever the heights.
 */
final class HorizonDiagram {
  private static final double WIDTH = 320;
  private static final double HEIGHT = 280;
  private static final double SIGHT = 120;
  private static final double RADIUS = 260;
  private static final Vec TOUCH = new Vec(172, SIGHT);
  private static final Vec CENTRE = new Vec(172, SIGHT + RADIUS);
  private static final Bearing LIGHT = Bearing.of(-27);
  private static final Bearing EYE = Bearing.of(20);

  private final SvgWriter svg = SvgWriter.scaled(WIDTH, HEIGHT);

  private HorizonDiagram() {}

  /** Light, eye and their heights. */
  static Svg question(RangeLookout lookout) {
    HorizonDiagram diagram = new HorizonDiagram();
    diagram.scene(lookout.elevation(), lookout.eye());
    return diagram.svg.finish();
  }

  /** The same with the miles from each to the horizon. */
  static Svg answered(RangeLookout lookout, Lettering lettering) {
    HorizonDiagram diagram = new HorizonDiagram();
    diagram.scene(lookout.elevation(), lookout.eye());
    diagram.span(LIGHT, lookout.elevation().horizon(), lettering);
    diagram.span(EYE, lookout.eye().horizon(), lettering);
    return diagram.svg.finish();
  }

  private void scene(Elevation light, Elevation eye) {
    svg.element("rect", "width", WIDTH, "height", HEIGHT, "fill", Palette.NIGHT);
    Pen.circle(svg, CENTRE, RADIUS, Palette.NIGHT_SEA, Palette.NIGHT_INK, 1.4);
    Vec lamp = onSight(LIGHT);
    Vec watch = onSight(EYE);
    PathData ray = PathData.line(lamp.x(), lamp.y(), watch.x(), watch.y());
    Pen.dashed(svg, ray, Palette.NIGHT_INK, 1.2, "5 4");
    Pen.line(svg, upright(LIGHT), Palette.NIGHT_INK, 5);
    svg.element("circle", "cx", lamp.x(), "cy", lamp.y(), "r", 5, "fill", Palette.WHITE_LIGHT);
    boat(watch);
    name(light.notation(), foot(LIGHT).plus(new Vec(22, 34)));
    name(eye.notation(), foot(EYE).plus(new Vec(-14, 34)));
  }

  private void boat(Vec watch) {
    Vec foot = foot(EYE);
    svg.begin("g", "transform", foot.turned(EYE));
    PathData hull = PathData.polygon(-20, -5, 18, -5, 13, 4, -16, 4);
    Pen.area(svg, hull, Palette.NIGHT_INK, Palette.NIGHT_INK, 1);
    svg.end();
    Pen.line(svg, upright(EYE), Palette.NIGHT_INK, 2);
    svg.element("circle", "cx", watch.x(), "cy", watch.y(), "r", 3.4, "fill", Palette.NIGHT_INK);
  }

  private void span(Bearing place, double miles, Lettering lettering) {
    Vec end = onSight(place);
    double y = SIGHT - 26;
    PathData span =
        PathData.line(end.x(), y, TOUCH.x(), y)
            .move(end.x(), y - 5)
            .line(end.x(), y + 5)
            .move(TOUCH.x(), y - 5)
            .line(TOUCH.x(), y + 5);
    Pen.line(svg, span, Palette.NIGHT_INK, 1.4);
    String text = SvgWriter.decimal(miles, 10).replace('.', lettering.decimalPoint());
    name(text, new Vec((end.x() + TOUCH.x()) / 2, y - 14));
  }

  private void name(String text, Vec middle) {
    Pen.letters(svg, text, middle, 16, Palette.NIGHT_INK);
  }

  private static PathData upright(Bearing place) {
    Vec foot = foot(place);
    Vec top = onSight(place);
    return PathData.line(foot.x(), foot.y(), top.x(), top.y());
  }

  private static Vec foot(Bearing place) {
    return CENTRE.plus(Vec.along(place, RADIUS));
  }

  /** The place above the foot that the line of sight reaches. */
  private static Vec onSight(Bearing place) {
    double up = RADIUS / StrictMath.cos(StrictMath.toRadians(place.degrees()));
    return CENTRE.plus(Vec.along(place, up));
  }
}
