package withy.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.hydrography.SurveyedWater;

/** Shows an instructor the waters in which drills can be set. */
public final class ListWaters {
  private final Waters waters;
  private final WaterFiles files;

  ListWaters(Waters waters, WaterFiles files) {
    this.waters = waters;
    this.files = files;
  }

  /**
   * A water to choose.
   *
   * @param text of its file
   * @param own the import, null of a water that comes with the program
   */
  public record Listed(SurveyedWater water, String text, @Nullable KeptWater own) {}

  /** Those that come with the program, then the instructor's own, the newest first. */
  public List<Listed> all(InstructorCaller instructor) {
    List<Listed> all = new ArrayList<>();
    files.authored().forEach(each -> all.add(new Listed(each.water(), each.text(), null)));
    waters
        .of(instructor.id())
        .forEach(each -> all.add(new Listed(each.water(), each.text(), each)));
    return all;
  }

  /**
   * One of them.
   *
   * @throws Refused UNKNOWN_WATER, also where it is another's
   */
  public Listed one(InstructorCaller instructor, String id) {
    Optional<Listed> authored =
        files.authored().stream()
            .filter(each -> each.id().equals(id))
            .findFirst()
            .map(each -> new Listed(each.water(), each.text(), null));
    return authored
        .or(() -> own(instructor, id).map(each -> new Listed(each.water(), each.text(), each)))
        .orElseThrow(() -> new Refused(Reason.UNKNOWN_WATER));
  }

  private Optional<KeptWater> own(InstructorCaller instructor, String id) {
    return waters.find(id).filter(each -> each.instructor().equals(instructor.id()));
  }

  /** What is odd about the file of a water. */
  public List<WaterProblem> remarks(Listed listed) {
    try {
      return files.read(listed.water().id(), listed.water().title(), listed.text()).remarks();
    } catch (UnfitWater e) {
      throw new IllegalStateException("the kept water " + listed.water().id() + " is unfit", e);
    }
  }

  /** The id of a water that comes with the program, of which the file shows how one is written. */
  public String example() {
    return files.authored().get(0).id();
  }

  /**
   * Forgets one of the instructor's own. Drills that were assigned in it go on.
   *
   * @throws Refused UNKNOWN_WATER, also where it is another's or comes with the program
   */
  public void remove(InstructorCaller instructor, String id) {
    KeptWater water = own(instructor, id).orElseThrow(() -> new Refused(Reason.UNKNOWN_WATER));
    waters.remove(water.id());
  }
}
