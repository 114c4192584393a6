package withy.core.scenario;

import withy.core.geometry.Position;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.Keel;

/** Open water with one danger in it: a shoal, or a rock or wreck that stands alone. */
final class OffshoreLayout extends Layout {
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
    Danger danger = shoal ? bank() : single();
    double swelling = between(30, 60) / 10;
    return new Seabed(frame, spot -> floor(spot, danger, deep, falling, swelling)).with(danger);
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

  /** A slope with swells, shallower towards a shoal. */
  private double floor(Spot spot, Danger danger, double deep, double falling, double swelling) {
    double away = spot.place().distanceTo(danger.at());
    double rise = shoal ? 0.45 * (1 - Unevenness.smooth(away / 800)) : 0;
    double open =
        deep - falling * spot.inland() / (Seabed.SIDE / 2) + swelling * swell(spot.place());
    return Math.max(4.5, open) * (1 - rise);
  }
}
