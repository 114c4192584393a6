package withy.catalogue;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.response.DrillSet;
import withy.usecase.DrillSetFiles;
import withy.usecase.UnfitDrillSet;

/** The drill sets that come with the program, and the files of others. */
public final class DrillSetCatalogue implements DrillSetFiles {
  private final AuthoredDrillSets authored = new AuthoredDrillSets();

  @Override
  public List<Named> all() {
    return authored.all();
  }

  @Override
  public Read read(String text) throws UnfitDrillSet {
    try {
      return DrillSetReader.readWhole("", text);
    } catch (InvalidDrillSet e) {
      throw new UnfitDrillSet(e.problems());
    }
  }

  @Override
  public String write(DrillSet set, @Nullable String water) {
    return DrillSetWriter.write(set, water);
  }

  @Override
  public String water(String title, String text) {
    return DrillSetWriter.file(title, text);
  }
}
