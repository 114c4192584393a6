package withy.drawing;

import withy.core.geometry.Bearing;
import withy.core.scenario.SectorLookout;
import withy.core.scenario.SectorQuestion;

/**
 * Where things stand in the diagram of a light with sectors, as distances from the light.
 *
 * @param arc that joins the limits of a sector
 * @param letter of the colour, and inner where the boat covers that
 * @param figure of the bearing
 * @param end of the dashed limits
 */
record SectorLayout(
    Vec light, double arc, double letter, double inner, double figure, double boat, double end) {
  /** How far a light that leads in stands from the middle, so that its narrow sectors spread. */
  private static final double OFF = 92;

  static SectorLayout of(SectorLookout lookout) {
    boolean leadsIn =
        lookout.question() == SectorQuestion.FAIRWAY || lookout.question() == SectorQuestion.LIMIT;
    if (!leadsIn) {
      return new SectorLayout(ChartDisc.MIDDLE, 66, 82, 46, 36, 94, ChartDisc.RADIUS - 4);
    }
    Bearing inward = lookout.white().bearings().middle();
    Vec light = ChartDisc.MIDDLE.plus(Vec.along(inward, OFF));
    return new SectorLayout(light, 150, 172, 172, 62, 116, 190);
  }

  /** The place in a direction from the light. */
  Vec at(Bearing direction, double distance) {
    return light.plus(Vec.along(direction, distance));
  }
}
