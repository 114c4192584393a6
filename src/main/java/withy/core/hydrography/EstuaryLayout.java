package withy.core.hydrography;

import java.util.List;
import withy.core.Chance;
import withy.core.geometry.Position;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.Keel;

/**
 * A funnel that widens to the sea, full of drying banks, with a bar before its mouth over which a
 * leading line leads.
 */
final class EstuaryLayout extends Layout {
  /** Inland of the middle: the coast on either side of the mouth, the end of the straight reach. */
  private static final double MOUTH = -400;

  private static final double BEND = -240;

  private static final double EROSION = 60;

  private final int swing;
  private final double turning;
  private final double head;
  private final double widening;
  private final double front;

  EstuaryLayout(Chance chance, Keel keel, double tide) {
    super(chance, keel, tide);
    this.swing = hand();
    this.turning = between(400, 480);
    this.head = between(130, 165);
    this.widening = between(330, 430);
    this.front = between(-540, -490);
  }

  @Override
  Seabed seabed() {
    Channel main =
        channel(
            "main",
            course(
                List.of(
                    at(-BEYOND, 0),
                    at(-880, 0),
                    at(BEND - 120, 0),
                    at(BEND, 0),
                    at(40, axis(40) + swing * between(60, 90)),
                    at(380, axis(380) + swing * between(-40, 50)),
                    at(760, axis(760) + between(-50, 50)),
                    at(BEYOND, axis(BEYOND) + between(-200, 200)))),
            width());
    double crest = edgeOfBar(0) + 75;
    main.withSill(main.course().foot(at(crest, 0)).along(), 150, scant);
    Seabed seabed =
        new Seabed(frame, this::ground)
            .cut(main)
            .cut(creek(main, main.course().length() * 0.66, hand()))
            .with(new Danger(DangerKind.BAR, at(crest, 0), 110, scant));
    Position until = at(BEND - 20, 0);
    return Leading.ashore(seabed, frame, main.fairway().line().start(), until)
        .map(seabed::led)
        .orElse(seabed);
  }

  /** Metres to starboard at which the middle of the funnel lies. */
  private double axis(double inland) {
    return swing * turning * Unevenness.smooth((inland + 330) / 900);
  }

  /** Where the bar falls to the sea: it bulges seaward before the mouth. */
  private double edgeOfBar(double abeam) {
    return front - 150 * Unevenness.smooth(1 - Math.abs(abeam) / 480);
  }

  private double ground(Spot spot) {
    double inland = spot.inland();
    double closed = 1 - Math.min(1, Math.max(0, (inland - MOUTH) / 1000));
    double half = head + widening * closed * closed * Math.sqrt(closed);
    double within = half - Math.abs(spot.abeam() - axis(inland));
    double smooth = Math.max(within, MOUTH - inland);
    if (isHigh(smooth, EROSION)) {
      return inland();
    }
    double coast = smooth + EROSION * erosion(spot.place());
    if (coast <= 0) {
      return shore(coast, 0);
    }
    double sand = banks(inland, spot.abeam() - axis(inland), 0);
    double off = edgeOfBar(spot.abeam()) - inland + 40 * swell(spot.place());
    double sea =
        off > 0 ? sand + off / 34 + 0.8 * swell(spot.place()) * Math.min(1, off / 200) : sand;
    return shore(coast, sea);
  }
}
