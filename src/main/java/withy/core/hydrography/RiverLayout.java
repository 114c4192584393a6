package withy.core.hydrography;

import java.util.ArrayList;
import java.util.List;
import withy.core.Chance;
import withy.core.geometry.Polyline.Foot;
import withy.core.geometry.Position;
import withy.core.waterway.Keel;

/**
 * A river that winds across the chart: steep and deep on the outer side of its bends, points of mud
 * on the inner one.
 */
final class RiverLayout extends Layout {
  /** Metres between the farthest places of neighbouring bends, along the chart. */
  private static final double BEND = 580;

  private static final double EROSION = 40;
  private static final double OUTER_SHORE = 48;

  RiverLayout(Chance chance, Keel keel, double tide) {
    super(chance, keel, tide);
  }

  @Override
  Seabed seabed() {
    Channel main = channel("main", course(bends()), width());
    double wide = between(115, 175);
    Seabed seabed = new Seabed(frame, spot -> ground(spot, main, wide)).cut(main);
    double length = main.course().length();
    for (int i = 0; i < 2; i++) {
      seabed.cut(creek(main, length * (0.33 + 0.3 * i) + between(-60, 60), hand()));
    }
    return seabed;
  }

  private List<Position> bends() {
    List<Position> corners = new ArrayList<>();
    int swing = hand();
    double phase = between(0, 200);
    for (double inland = -BEYOND - phase; inland < BEYOND + BEND; inland += BEND) {
      corners.add(at(inland + between(-50, 50), swing * between(190, 300)));
      swing = -swing;
    }
    return corners;
  }

  private double ground(Spot spot, Channel main, double wide) {
    Foot foot = spot.feet().get(0);
    double inner = main.inner(foot);
    double outer = main.bend(foot.along()) * Math.signum(foot.off());
    double reach = wide + 60 * inner - (wide - OUTER_SHORE) * Math.max(0, outer) * 0.8;
    double off = foot.distance() - main.fairway().width() / 2;
    if (isHigh(reach - off, EROSION)) {
      return inland();
    }
    double coast = reach - off + EROSION * erosion(spot.place()) * Unevenness.smooth(off / 60);
    return coast <= 0
        ? shore(coast, 0)
        : shore(coast, banks(foot.along(), foot.off(), 1.1 * inner));
  }
}
