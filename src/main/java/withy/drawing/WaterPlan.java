package withy.drawing;

import org.jspecify.annotations.Nullable;
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
   * @param answered whether the local direction is shown where it has to be found out
   */
  static Svg of(Situation situation, Lettering lettering, boolean answered) {
    SvgWriter svg = SvgWriter.scaled(ChartDisc.SIZE, ChartDisc.SIZE);
    ChartDisc disc = ChartDisc.on(svg);
    Setting setting = situation.setting() == null ? Setting.COAST : situation.setting();
    Bearing local = situation.buoyage() == null ? Bearing.NORTH : situation.buoyage();
    svg.begin("g", "transform", ChartDisc.MIDDLE.turned(local));
    Pen.area(svg, land(setting), Palette.LAND, Palette.INK, 1.6);
    if (setting == Setting.RIVER) {
      Pen.area(svg, farBank(), Palette.LAND, Palette.INK, 1.6);
    }
    svg.end();
    disc.ring(lettering);
    arrows(disc, setting, local, situation.general(), answered);
    disc.boat(at(boat(setting), local), situation.heading(), 44);
    return svg.finish();
  }

  private static void arrows(
      ChartDisc disc, Setting setting, Bearing local, @Nullable Bearing general, boolean answered) {
    if (setting == Setting.COAST) {
      disc.buoyage(at(new Vec(-62, 0), local), local);
    } else {
      if (general != null) {
        disc.buoyage(at(new Vec(-48, 62), local), general);
      }
      if (answered) {
        disc.buoyage(
            at(setting == Setting.RIVER ? new Vec(26, 62) : new Vec(46, 60), local), local);
      }
    }
  }

  private static Vec boat(Setting setting) {
    return switch (setting) {
      case COAST -> new Vec(-12, 0);
      case HARBOUR -> new Vec(0, 28);
      case RIVER -> new Vec(-2, 18);
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
        .cubic(-26, -30, -40, -38, -40, -54)
        .cubic(-40, -74, -18, -80, 2, -80)
        .cubic(24, -80, 42, -72, 40, -52)
        .cubic(38, -36, 24, -30, 23, -18)
        .line(15, 0)
        .line(22, 4)
        .line(44, -16)
        .cubic(62, -14, 84, -24, right.x(), right.y())
        .arc(R, rim(0).x(), rim(0).y(), false)
        .arc(R, left.x(), left.y(), false)
        .close();
  }

  private static PathData nearBank() {
    Vec top = rim(346);
    Vec mouth = rim(244);
    return PathData.at(top.x(), top.y())
        .cubic(-34, -92, -46, -74, -38, -54)
        .cubic(-28, -30, -24, -12, -36, 8)
        .cubic(-46, 26, -62, 30, mouth.x(), mouth.y())
        .arc(R, rim(290).x(), rim(290).y(), true)
        .arc(R, top.x(), top.y(), true)
        .close();
  }

  private static PathData farBank() {
    Vec top = rim(4);
    Vec mouth = rim(112);
    return PathData.at(top.x(), top.y())
        .cubic(-2, -90, -14, -76, -6, -54)
        .cubic(6, -28, 24, -14, 30, 6)
        .cubic(38, 26, 66, 28, mouth.x(), mouth.y())
        .arc(R, rim(60).x(), rim(60).y(), false)
        .arc(R, top.x(), top.y(), false)
        .close();
  }
}
