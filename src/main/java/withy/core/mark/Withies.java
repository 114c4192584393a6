package withy.core.mark;

import java.util.List;

/**
 * Withies and brooms along creeks and over tidal flats (S-57 BCNSHP 2, TOPSHP 15 and 16): twigs up
 * to port, down to starboard, entering. The side is from memory; the band tied on in the colour of
 * the hand is common practice, no source.
 */
final class Withies {
  private Withies() {}

  static List<MarkDescription> of(Region region) {
    return List.of(
        stake("broom-port-hand", MarkKind.PORT_HAND, region.portHand(), Structure.BROOM_UP)
            .asks(Passing.LEAVE_TO_PORT, Demand.KEEP_TO_ITS_SIDE)
            .build(),
        stake(
                "broom-starboard-hand",
                MarkKind.STARBOARD_HAND,
                region.starboardHand(),
                Structure.BROOM_DOWN)
            .asks(Passing.LEAVE_TO_STARBOARD, Demand.KEEP_TO_ITS_SIDE)
            .build(),
        stake("withy-port-hand", MarkKind.PORT_HAND, region.portHand(), Structure.WITHY)
            .asks(Passing.LEAVE_TO_PORT, Demand.KEEP_TO_ITS_SIDE)
            .build(),
        stake(
                "withy-starboard-hand",
                MarkKind.STARBOARD_HAND,
                region.starboardHand(),
                Structure.WITHY)
            .asks(Passing.LEAVE_TO_STARBOARD, Demand.KEEP_TO_ITS_SIDE)
            .build());
  }

  private static MarkDescription.Builder stake(
      String id, MarkKind kind, Colour band, Structure structure) {
    return MarkDescription.of(kind, MarkGroup.WITHIES)
        .id(id)
        .words("mark." + id, "mark." + id)
        .bodies(BodyShape.SPAR)
        .structures(structure)
        .painted(ColourPattern.PLAIN, band)
        .laidDown(
            Clause.read("IHO S-57 Appendix A", "edition 3.1", "BCNSHP 2; TOPSHP 15 and 16"),
            Clause.remembered("local practice of tidal flats", "no edition", "side of the brooms"));
  }
}
