package withy.usecase;

import java.util.List;
import java.util.Optional;

/** Where imported waters are kept. */
public interface Waters {
  void add(KeptWater water);

  Optional<KeptWater> find(String id);

  /** The waters of an instructor, the newest first. */
  List<KeptWater> of(String instructor);

  /** Forgets a water; drills that were assigned in it keep their copy. */
  void remove(String id);
}
