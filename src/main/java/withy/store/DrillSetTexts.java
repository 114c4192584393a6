package withy.store;

import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import withy.core.response.DrillSet;
import withy.usecase.DrillSetFiles;
import withy.usecase.UnfitDrillSet;

/**
 * Drill sets as one text, the same that files have, so that whatever a composition comes to hold is
 * kept without another column. The water is kept beside it, as a copy.
 */
final class DrillSetTexts {
  private final WaterTable waters;
  private final DrillSetFiles files;

  DrillSetTexts(WaterTable waters, DrillSetFiles files) {
    this.waters = waters;
    this.files = files;
  }

  String write(DrillSet set) {
    return files.write(new DrillSet(set.title(), set.composition().in(null)), null);
  }

  /** The digest of the copy of its water; null where it has none. */
  @Nullable String water(Handle handle, DrillSet set) {
    return waters.keptFor(handle, set.composition().water());
  }

  DrillSet read(String text, @Nullable String waterFile) {
    try {
      DrillSet dry = files.read(text).set();
      return new DrillSet(dry.title(), dry.composition().in(waters.water(waterFile)));
    } catch (UnfitDrillSet e) {
      throw new IllegalStateException("a kept drill set is unfit: " + e.problems(), e);
    }
  }
}
