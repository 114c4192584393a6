package withy.usecase;

import java.util.List;
import java.util.Objects;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.response.DrillSet;

/** Takes in the file of a drill set. */
public final class ImportDrillSet {
  private final KeepDrillSet keepDrillSet;
  private final ImportWater importWater;
  private final Waters waters;
  private final DrillSetFiles files;

  ImportDrillSet(KeepDrillSet keepDrillSet, ImportWater importWater, Ports ports) {
    this.keepDrillSet = keepDrillSet;
    this.importWater = importWater;
    this.waters = ports.waters();
    this.files = ports.drillSetFiles();
  }

  /**
   * Takes a drill set in, and with it the water that lies in its file, unless the instructor has
   * the same already.
   *
   * @throws UnfitDrillSet if the file cannot be used, with all that is wrong with it
   * @throws Refused TOO_MANY_DRILL_SETS, TOO_MANY_WATERS
   */
  public KeptDrillSet take(InstructorCaller instructor, String text) throws UnfitDrillSet {
    DrillSetFiles.Read read = files.read(text);
    requireTitles(read.set());
    keepDrillSet.requireRoom(instructor);
    return keepDrillSet.keep(instructor, read.set().title(), composition(instructor, read));
  }

  private static void requireTitles(DrillSet set) throws UnfitDrillSet {
    requireTitle("title", set.title());
    SurveyedWater water = set.composition().water();
    if (water != null) {
      requireTitle("water.title", water.title());
    }
  }

  private static void requireTitle(String place, String title) throws UnfitDrillSet {
    try {
      Names.name(title);
    } catch (Refused unfit) {
      String key = "drill-set.problem.title-unfit";
      throw new UnfitDrillSet(List.of(new DrillSetProblem(place, key, unfit.details())));
    }
  }

  private Composition composition(InstructorCaller instructor, DrillSetFiles.Read read)
      throws UnfitDrillSet {
    Composition sent = read.set().composition();
    String water = read.water();
    return water == null
        ? sent
        : sent.in(own(instructor, Objects.requireNonNull(sent.water()).title(), water));
  }

  /** The water of the instructor's that has this file, taken in if there is none. */
  private SurveyedWater own(InstructorCaller instructor, String title, String text)
      throws UnfitDrillSet {
    for (KeptWater each : waters.of(instructor.id())) {
      boolean same = each.title().equals(title) && files.water(title, each.text()).equals(text);
      if (same) {
        return each.water();
      }
    }
    try {
      return importWater.take(instructor, null, text).water().water();
    } catch (UnfitWater unfit) {
      throw new UnfitDrillSet(unfit.problems().stream().map(DrillSetProblem::of).toList());
    }
  }
}
