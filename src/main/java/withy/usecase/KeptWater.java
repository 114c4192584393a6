package withy.usecase;

import java.time.Instant;
import withy.core.hydrography.SurveyedWater;

/**
 * A water that an instructor imported.
 *
 * @param instructor whose it is
 * @param text of its file, as it was sent
 */
public record KeptWater(SurveyedWater water, String instructor, String text, Instant importedAt) {
  public String id() {
    return water.id();
  }

  public String title() {
    return water.title();
  }
}
