package withy.core.hydrography;

import withy.core.Chance;
import withy.core.geometry.Position;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.Keel;

/** Open water with one danger in it: a shoal, or a rock or wreck that stands alone. */
final class OffshoreLayout extends Layout {
  /** How much narrower than long a shoal is. */
  private static final double NARROW = 1.25;

  /** The share of its extent over which a shoal is level. */
  private static final double LEVEL = 0.4;

  /** Metres below datum above which open water rises but slowly. */
  private static final double OPEN = 7.5;

  private final boolean shoal;

  private OffshoreLayout(Chance chance, Keel keel, double tide, boolean shoal) {
    super(chance, keel, tide);
    this.shoal = shoal;
  }

  static OffshoreLayout shoal(Chance chance, Keel keel, double tide) {
    return new OffshoreLayout(chance, keel, tide, true);
  }

  static OffshoreLayout rock(Chance chance, Keel keel, double tide) {
    return new OffshoreLayout(chance, keel, tide, false);
  }

  @Override
  Seabed seabed() {
    double deep = between(90, 130) / 10;
    double falling = between(20, 45) / 10;
    double swelling = between(35, 65) / 10;
    if (shoal) {
      Danger bank = bank();
      return new Seabed(frame, spot -> floor(spot, bank, deep, falling, swelling))
          .with(bank, spot -> lobed(spot, bank));
    }
    Danger single = single();
    double coast = chance.oneIn(2) ? between(840, 930) : 2 * Seabed.SIDE;
    return new Seabed(
            frame, spot -> coast(spot, coast, floor(spot, single, deep, falling, swelling)))
        .with(single);
  }

  private Danger bank() {
    double least = Math.rint(10 * flats - between(0, 8)) / 10;
    return new Danger(
        DangerKind.SHOAL, cell(between(-140, 140), between(-140, 140)), between(240, 320), least);
  }

  private Danger single() {
    DangerKind kind = chance.oneIn(3) ? DangerKind.WRECK : DangerKind.ROCK;
    double least = Math.rint(10 * flats - between(2, 14)) / 10;
    Position place = cell(between(-260, 260), between(-260, 260));
    return new Danger(kind, place, between(70, 100), least);
  }

  /** From 0 in the middle of a shoal to 1 at its edge: longer than broad, and never quite round. */
  private double lobed(Spot spot, Danger bank) {
    double ahead = spot.inland() - frame.inland(bank.at());
    double aside = spot.abeam() - frame.abeam(bank.at());
    double off = StrictMath.hypot(ahead, NARROW * aside) / bank.radius();
    double ragged = off * (1 + 0.3 * (1 + erosion(spot.place())) * Unevenness.smooth(3 * off));
    return Math.max(0, ragged - LEVEL) / (1 - LEVEL);
  }

  /** Water that runs up to a coast in a corner of the chart. */
  private double coast(Spot spot, double inland, double sea) {
    double off = inland - spot.inland() + 60 * erosion(spot.place());
    double shelving = sea * Math.min(1, 0.12 + Math.max(0, off) / 420);
    return shore(off, Math.min(sea, shelving));
  }

  /** A slope with swells, shallower towards a shoal. */
  private double floor(Spot spot, Danger danger, double deep, double falling, double swelling) {
    double away = spot.place().distanceTo(danger.at());
    double rise = shoal ? 0.45 * (1 - Unevenness.smooth(away / 800)) : 0;
    double open =
        deep - falling * spot.inland() / (Seabed.SIDE / 2) + swelling * swell(spot.place());
    return (open > OPEN ? open : OPEN - 0.3 * (OPEN - open)) * (1 - rise);
  }
}
