package withy.usecase;

import java.time.Instant;
import withy.core.response.DrillSet;

/**
 * A drill set that an instructor keeps. Drills that were assigned from it are drills of their own:
 * no change of the set reaches them.
 *
 * @param instructor whose it is, and who alone may change it
 * @param shared whether the other instructors of the school see it
 */
public record KeptDrillSet(
    String id, String instructor, DrillSet set, boolean shared, Instant keptAt) {
  KeptDrillSet titled(String title) {
    DrillSet renamed = new DrillSet(title, set.composition());
    return new KeptDrillSet(id, instructor, renamed, shared, keptAt);
  }

  KeptDrillSet shared(boolean withSchool) {
    return new KeptDrillSet(id, instructor, set, withSchool, keptAt);
  }
}
