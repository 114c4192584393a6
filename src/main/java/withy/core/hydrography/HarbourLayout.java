package withy.core.hydrography;

import java.util.List;
import withy.core.Chance;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.waterway.Keel;

/**
 * A harbour behind two moles: a dredged approach over the shelf, an outer harbour of mud, and a
 * basin with quays cut into the land, with leading marks behind it.
 */
final class HarbourLayout extends Layout {
  /** Inland of the middle: the coast, and where the basin begins. */
  private static final double COASTLINE = -40;

  private static final double QUAY = 70;

  private static final double EROSION = 60;

  /** How steeply a quay rises from the basin. */
  private static final double STEEP = 0.34;

  private final int swing;
  private final double wide;
  private final double end;
  private final double left;
  private final double right;
  private final double shelf;

  HarbourLayout(Chance chance, Keel keel, double tide) {
    super(chance, keel, tide);
    this.swing = hand();
    this.wide = width();
    this.end = between(330, 430);
    this.left = between(90, 150);
    this.right = between(150, 230);
    this.shelf = between(-650, -590);
  }

  @Override
  Seabed seabed() {
    double bend = between(-260, 260);
    Channel main =
        channel(
            "main",
            course(
                List.of(
                    at(-BEYOND, bend),
                    at(-950, bend / 3),
                    at(-760, 0),
                    at(-640, 0),
                    at(QUAY, 0),
                    at(end - 70, 0))),
            wide);
    Seabed seabed = new Seabed(frame, this::ground).cut(main);
    mole(seabed, 1, -450, 300);
    mole(seabed, -1, -345, 250);
    Position from = at(-640, 0);
    return Leading.ashore(seabed, frame, from, at(QUAY - 30, 0)).map(seabed::led).orElse(seabed);
  }

  /** A mole from the coast to its head at the edge of the fairway. */
  private void mole(Seabed seabed, int hand, double seaward, double abeam) {
    int side = hand * swing;
    double head = wide / 2 + Mole.FOOT;
    double root = abeam + between(0, 60);
    Polyline line =
        Polyline.of(
            at(COASTLINE + 70, side * (root + 30)),
            at(COASTLINE - 90, side * root),
            at(seaward + 110, side * abeam),
            at(seaward + 15, side * (head + 70)),
            at(seaward, side * head));
    seabed.built(new Mole(line)).head(line.end());
  }

  private double ground(Spot spot) {
    double inland = spot.inland();
    double abeam = swing * spot.abeam();
    return Math.max(
        coast(spot, inland, abeam), Math.max(basin(inland, abeam), neck(inland, abeam)));
  }

  /** The land, the foreshore, the shelf before it and the sea beyond. */
  private double coast(Spot spot, double inland, double abeam) {
    if (isHigh(COASTLINE - inland, EROSION)) {
      return inland();
    }
    double open = Unevenness.smooth((Math.abs(abeam) - 260) / 200);
    double coast = COASTLINE - inland + EROSION * erosion(spot.place()) * (0.25 + 0.75 * open);
    if (coast <= 0) {
      return shore(coast, 0);
    }
    double off = shelf - inland + 60 * swell(spot.place());
    double sand = banks(abeam, inland, 0);
    return shore(coast, off > 0 ? sand + off / 30 : sand);
  }

  /** The dredged basin: level, with quays as steep as the depths can show them. */
  private double basin(double inland, double abeam) {
    double beyond =
        Math.max(Math.max(QUAY - inland, inland - end), Math.max(-left - abeam, abeam - right));
    return edge + 0.5 - STEEP * Math.max(0, beyond);
  }

  /** Between the outer harbour and the basin, walls on both hands. */
  private double neck(double inland, double abeam) {
    double beyond = Math.max(Math.abs(abeam) - wide / 2, Math.max(inland - end, -60 - inland));
    return edge - STEEP * Math.max(0, beyond);
  }
}
