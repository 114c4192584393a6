package withy.usecase;

import java.util.List;
import java.util.Optional;

/** Where drill sets are kept. */
public interface KeptDrillSets {
  void add(KeptDrillSet set);

  /** Keeps title and sharing of a set as they are now; what it is drawn from stays. */
  void change(KeptDrillSet set);

  Optional<KeptDrillSet> find(String id);

  /** An instructor's drill sets, the newest first. */
  List<KeptDrillSet> of(String instructor);

  /** The drill sets that other instructors share, the newest first. */
  List<KeptDrillSet> sharedWith(String instructor);

  /** The file of the water in which a set is drilled; empty where waters are generated. */
  Optional<String> water(String id);

  /** Forgets a set; drills that were assigned from it go on. */
  void remove(String id);
}
