package withy.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.hydrography.SurveyedWater;
import withy.core.mark.Practice;
import withy.core.mark.Region;
import withy.usecase.UnfitWater;
import withy.usecase.WaterFiles;

/**
 * Reads waters from GeoJSON (RFC 7946; WGS 84, longitude first) whose properties carry names and
 * codes of IHO S-101. Beside the members of a collection, {@code title}, {@code tide} (metres above
 * datum) and {@code marksNavigationalSystemOf} (1 for region A, 2 for B) stand at the top.
 */
public final class WaterReader implements WaterFiles {
  private static final double HIGHEST_TIDE = 10;

  @Override
  public Read read(String id, @Nullable String title, String text) throws UnfitWater {
    Problems problems = new Problems();
    FeatureReader reader = new FeatureReader(problems);
    JsonNode root = reader.collection(text);
    SurveyedWater water = root == null ? null : water(id, title, root, reader, problems);
    if (water == null || !problems.isEmpty()) {
      throw new UnfitWater(problems.problems());
    }
    return new Read(water, problems.remarks());
  }

  private static @Nullable SurveyedWater water(
      String id, @Nullable String title, JsonNode root, FeatureReader reader, Problems problems) {
    Attributes top = new Attributes(root, "", problems);
    String named = top.text("title");
    Double tide = top.number("tide", 0, HIGHEST_TIDE);
    Region region = S101Codes.optional(top, "marksNavigationalSystemOf", S101Codes.SYSTEM);
    String called = title == null ? named : title;
    boolean untold = title == null && !top.has("title");
    if (untold || (called != null && called.isBlank())) {
      problems.add("title", "missing");
    }
    List<SurveyedFeature> features = reader.features(root);
    Practice practice = region == Region.B ? Practice.IALA_B : Practice.IALA_A;
    return new WaterBuilder(features, practice, tide == null ? 0 : tide, problems)
        .water(id, called == null ? "" : called.strip());
  }

  @Override
  public List<Authored> authored() {
    return AuthoredWaters.all();
  }
}
