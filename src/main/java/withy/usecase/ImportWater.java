package withy.usecase;

import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.hydrography.SurveyedWater;

/** Takes in the file of an instructor's own water. */
public final class ImportWater {
  /** Waters that one instructor can have. */
  public static final int MOST = 20;

  private final Waters waters;
  private final WaterFiles files;
  private final Clock clock;
  private final Secrets secrets;

  ImportWater(Waters waters, WaterFiles files, Clock clock, Secrets secrets) {
    this.waters = waters;
    this.files = files;
    this.clock = clock;
    this.secrets = secrets;
  }

  /**
   * A water that was taken in.
   *
   * @param remarks what is odd about its file
   */
  public record Imported(KeptWater water, List<WaterProblem> remarks) {
    public Imported {
      remarks = List.copyOf(remarks);
    }
  }

  /**
   * Takes a water in.
   *
   * @param title that it shall have; null or blank for the one in the file
   * @throws UnfitWater if the file cannot be used, with all that is wrong with it
   * @throws Refused NAME_UNFIT, TOO_MANY_WATERS
   */
  public Imported take(InstructorCaller instructor, @Nullable String title, String text)
      throws UnfitWater {
    if (waters.of(instructor.id()).size() >= MOST) {
      throw new Refused(Reason.TOO_MANY_WATERS, MOST);
    }
    String wanted = title == null || title.isBlank() ? null : Names.name(title);
    WaterFiles.Read read = files.read(secrets.id(), wanted, text);
    SurveyedWater water = read.water();
    Names.name(water.title());
    KeptWater kept = new KeptWater(water, instructor.id(), text, Moments.now(clock));
    waters.add(kept);
    return new Imported(kept, read.remarks());
  }
}
