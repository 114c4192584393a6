package withy.core.hydrography;

import java.util.List;
import withy.core.Chance;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.Keel;

/**
 * A swatchway along a coast, between its foreshore and a long bank outside; beyond the bank the
 * open sea with a rock in it.
 */
final class CoastalLayout extends Layout {
  private static final double BANK_FROM = 30;

  CoastalLayout(Chance chance, Keel keel, double tide) {
    super(chance, keel, tide);
  }

  @Override
  Seabed seabed() {
    int coast = hand();
    double near = coast * 60.0;
    Channel main =
        channel(
            "main",
            course(
                List.of(
                    at(-BEYOND, near + between(-120, 120)),
                    at(-760, near + between(-80, 80)),
                    at(-260, near + between(-90, 90)),
                    at(260, near + between(-90, 90)),
                    at(760, near + between(-80, 80)),
                    at(BEYOND, near + between(-120, 120)))),
            width() * 1.3);
    double bank = between(170, 230);
    double inshore = between(230, 310);
    Danger rock =
        new Danger(
            DangerKind.ROCK,
            cell(between(-420, 420), -coast * between(560, 640)),
            between(70, 90),
            Math.rint(10 * flats - between(4, 12)) / 10);
    return new Seabed(frame, spot -> ground(spot, main, coast, bank, inshore)).cut(main).with(rock);
  }

  private double ground(Spot spot, Channel main, int coast, double bank, double inshore) {
    double off = coast * spot.feet().get(0).off();
    double along = spot.feet().get(0).along();
    double wild = erosion(spot.place());
    double half = main.fairway().width() / 2;
    double seaward = -off - half - bank - 45 * wild;
    double ridge =
        Unevenness.smooth((-off - half - BANK_FROM) / 60) * Unevenness.smooth(-seaward / 90);
    double sand = banks(along, off, 1.1 * ridge);
    double sea = seaward > 0 ? sand + seaward / 34 : sand;
    return shore(
        half + inshore - off + 75 * wild,
        sea + (seaward > 0 ? swell(spot.place()) : 0) * Unevenness.smooth(seaward / 150));
  }
}
