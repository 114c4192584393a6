package withy.core.item;

import withy.core.Term;

/** How hard an item is beside all others, by how many complications it has. */
public enum Difficulty implements Term {
  /** At most one complication. */
  EASIER,
  /** Two. */
  MIDDLE,
  /** Three or more. */
  HARDER;

  /** The difficulty of an item; the same item has the same one always. */
  public static Difficulty of(Item item) {
    int complications = 0;
    for (Complication each : Complication.values()) {
      complications += each.holds(item) ? 1 : 0;
    }
    return complications <= 1 ? EASIER : complications == 2 ? MIDDLE : HARDER;
  }
}
