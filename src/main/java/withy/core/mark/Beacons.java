package withy.core.mark;

import java.util.ArrayList;
import java.util.List;

/**
 * The fixed marks of the classes of a system's floating ones: a beacon means what the buoy of its
 * class means (33 CFR 62.23(b); R1001, other marks).
 */
final class Beacons {
  private Beacons() {}

  /** A beacon for each floating mark of a class that may be fixed. */
  static List<MarkDescription> of(List<MarkDescription> floating) {
    List<MarkDescription> beacons = new ArrayList<>();
    for (MarkDescription each : floating) {
      MarkGroup group = each.group();
      if (group.compareTo(MarkGroup.SPECIAL) <= 0) {
        beacons.add(beacon(each));
      }
    }
    return beacons;
  }

  private static MarkDescription beacon(MarkDescription buoy) {
    MarkLook look = buoy.look();
    List<BodyShape> bodies = List.of(BodyShape.BEACON);
    boolean needed = look.topmark() != null && !look.bodiesNeedingTopmark().isEmpty();
    MarkLook fixed =
        new MarkLook(
            buoy.kind(),
            bodies,
            look.pattern(),
            look.colours(),
            null,
            null,
            List.of(Structure.TOWER, Structure.LATTICE, Structure.PILE),
            look.topmark(),
            needed ? bodies : List.of(),
            look.lights(),
            look.retroreflectors());
    return new MarkDescription(
        buoy.id() + "-beacon",
        buoy.kind(),
        MarkGroup.FIXED,
        fixed,
        buoy.lightLimit(),
        buoy.passing(),
        buoy.demand(),
        buoy.numbering(),
        buoy.telling(),
        false,
        List.of(MarkRule.BEACON_MEANS_WHAT_ITS_BUOY_MEANS.clause()),
        buoy.nameKey() + "-beacon",
        buoy.aboutKey(),
        null);
  }
}
