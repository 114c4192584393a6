package withy.usecase;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.response.DrillSet;

/** Reads and writes drill sets as files have them, and knows those that come with the program. */
public interface DrillSetFiles extends DrillSets {
  /** Whoever needs none: knows no drill set, reads and writes none. */
  DrillSetFiles NONE =
      new DrillSetFiles() {
        @Override
        public List<Named> all() {
          return List.of();
        }

        @Override
        public Read read(String text) {
          throw new IllegalStateException("no drill set can be read here");
        }

        @Override
        public String write(DrillSet set, @Nullable String water) {
          throw new IllegalStateException("no drill set can be written here");
        }

        @Override
        public String water(String title, String text) {
          throw new IllegalStateException("no water can be written here");
        }
      };

  /**
   * A drill set that was read.
   *
   * @param water the file of a water that lay in the file of the set, as {@link #water} writes it;
   *     null where the set has none, or names one that comes with the program
   */
  record Read(DrillSet set, @Nullable String water) {}

  /**
   * The drill set of a file.
   *
   * @throws UnfitDrillSet if it cannot be used
   */
  Read read(String text) throws UnfitDrillSet;

  /**
   * The file of a drill set: the same bytes for the same set and water.
   *
   * @param water the file of its water, to lie in that of the set under the title that the water
   *     has; null to name the water by its id alone
   */
  String write(DrillSet set, @Nullable String water);

  /** The file of a water under a title, without what makes no difference to a reader. */
  String water(String title, String text);
}
