package withy.usecase;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.hydrography.SurveyedWater;

/** Reads waters from the text of their files, and knows those that come with the program. */
public interface WaterFiles {
  /** Whoever needs none: knows no water and reads none. */
  WaterFiles NONE =
      new WaterFiles() {
        @Override
        public Read read(String id, @Nullable String title, String text) {
          throw new IllegalStateException("no water can be read here");
        }

        @Override
        public List<Authored> authored() {
          return List.of();
        }
      };

  /**
   * A water that was read.
   *
   * @param remarks what is odd about it, though it can be used
   */
  record Read(SurveyedWater water, List<WaterProblem> remarks) {
    public Read {
      remarks = List.copyOf(remarks);
    }
  }

  /**
   * The water of a file.
   *
   * @param id that it shall have
   * @param title that it shall have; null for the one in the file
   * @throws UnfitWater if it cannot be used
   */
  Read read(String id, @Nullable String title, String text) throws UnfitWater;

  /** The texts of the waters that come with the program, by their ids. */
  List<Authored> authored();

  /** A water that comes with the program. */
  record Authored(String id, String text, SurveyedWater water) {}
}
