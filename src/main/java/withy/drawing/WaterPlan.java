package withy.drawing;

import withy.core.geometry.Bearing;
import withy.core.scenario.Setting;
import withy.core.scenario.Situation;

/**
 * A coast, a harbour entrance or a river, from which the conventional direction of buoyage is read.
 * All are drawn with that direction upward and turned to its bearing.
 */
final class WaterPlan {
  private static final double R = ChartDisc.RADIUS;

  private WaterPlan() {}

  /**
   * The plan with the arrows that its chart shows, and the boat on her heading; after the answer
   * the angle between the two that decides it.
   */
  static Svg of(Situation situation, Lettering lettering, boolean answered) {
    SvgWriter svg = SvgWriter.scaled(ChartDisc.SIZE, ChartDisc.SIZE);
    ChartDisc disc = ChartDisc.on(svg, 1);
    Setting setting = situation.setting() == null ? Setting.COAST : situation.setting();
    Bearing local = situation.buoyage() == null ? Bearing.NORTH : situation.buoyage();
    svg.begin("g", "transform", ChartDisc.MIDDLE.turned(local));
    Pen.area(svg, land(setting), Palette.LAND, Palette.INK, 1.6);
    if (setting == Setting.RIVER) {
      Pen.area(svg, farBank(), Palette.LAND, Palette.INK, 1.6);
    }
    svg.end();
    disc.ring(lettering);
    disc.buoyage(at(arrow(setting), local), local);
    Bearing general = situation.general();
    if (general != null) {
      disc.buoyage(at(new Vec(-52, 62), local), general);
    }
    Vec boat = at(boat(setting), local);
    if (answered) {
      disc.angle(boat, local, situation.heading());
    }
    disc.boat(boat, situation.heading(), answered ? 0 : 44);
    return svg.finish();
  }

  private static Vec arrow(Setting setting) {
    return switch (setting) {
      case COAST -> new Vec(-62, 0);
      case HARBOUR -> new Vec(0, -60);
      case RIVER -> new Vec(-23, -44);
    };
  }

  private static Vec boat(Setting setting) {
    return switch (setting) {
      case COAST -> new Vec(-12, 0);
      case HARBOUR -> new Vec(0, 28);
      case RIVER -> new Vec(-4, 30);
    };
  }

  /** A place of the plan with the conventional direction upward, in the picture. */
  private static Vec at(Vec place, Bearing up) {
    return ChartDisc.MIDDLE.plus(Vec.along(up.plus(90), place.x())).plus(Vec.along(up, -place.y()));
  }

  private static PathData land(Setting setting) {
    return switch (setting) {
      case COAST -> coast();
      case HARBOUR -> harbour();
      case RIVER -> nearBank();
    };
  }

  private static Vec rim(double degrees) {
    return Vec.along(Bearing.of(degrees), R);
  }

  /** Land to starboard of the direction, as it is clockwise round a continent. */
  private static PathData coast() {
    Vec from = rim(16);
    Vec to = rim(158);
    return PathData.at(from.x(), from.y())
        .cubic(42, -86, 66, -70, 54, -46)
        .cubic(44, -28, 30, -22, 38, 2)
        .cubic(44, 20, 62, 24, 58, 48)
        .cubic(55, 66, 40, 78, to.x(), to.y())
        .arc(R, rim(90).x(), rim(90).y(), false)
        .arc(R, from.x(), from.y(), false)
        .close();
  }

  /** A shore across, breakwaters, and the harbour behind them. */
  private static PathData harbour() {
    Vec left = rim(284);
    Vec right = rim(76);
    return PathData.at(left.x(), left.y())
        .cubic(-84, -22, -62, -14, -44, -16)
        .line(-22, 4)
        .line(-15, 0)
        .line(-24, -18)
        .cubic(-26, -30, -42, -40, -42, -60)
        .cubic(-42, -84, -20, -98, 2, -98)
        .cubic(26, -98, 44, -82, 42, -58)
        .cubic(40, -38, 24, -30, 23, -18)
        .line(15, 0)
        .line(22, 4)
        .line(44, -16)
        .cubic(62, -14, 84, -24, right.x(), right.y())
        .arc(R, rim(0).x(), rim(0).y(), false)
        .arc(R, left.x(), left.y(), false)
        .close();
  }

  private static PathData nearBank() {
    Vec top = rim(336);
    Vec mouth = rim(244);
    return PathData.at(top.x(), top.y())
        .cubic(-52, -88, -58, -74, -50, -52)
        .cubic(-42, -28, -32, -12, -40, 8)
        .cubic(-46, 26, -62, 30, mouth.x(), mouth.y())
        .arc(R, rim(290).x(), rim(290).y(), true)
        .arc(R, top.x(), top.y(), true)
        .close();
  }

  private static PathData farBank() {
    Vec top = rim(6);
    Vec mouth = rim(112);
    return PathData.at(top.x(), top.y())
        .cubic(6, -90, -4, -76, 2, -54)
        .cubic(10, -28, 26, -14, 32, 6)
        .cubic(38, 26, 66, 28, mouth.x(), mouth.y())
        .arc(R, rim(60).x(), rim(60).y(), false)
        .arc(R, top.x(), top.y(), false)
        .close();
  }
}
