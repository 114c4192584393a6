package withy.core.hydrography;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.light.LightCharacter;
import withy.core.mark.BodyShape;
import withy.core.mark.Practice;
import withy.core.waterway.Keel;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/**
 * Drawn waters by name, as a survey would tell them, so that any practice can mark one and the same
 * water. The name is that of the blueprint with a number: {@code river-7}.
 */
public final class DrawnWaters {
  /** The greatest number of a water. */
  public static final long LAST = 999_999_999;

  private static final Pattern NAME = Pattern.compile("([a-z]+(?:-[a-z]+)*)-([1-9][0-9]{0,8})");

  private DrawnWaters() {}

  /** The name of a water. */
  public static String id(Blueprint blueprint, long number) {
    return blueprint.id() + "-" + number;
  }

  /** A number of a kind of water. */
  public record Drawn(Blueprint blueprint, long number) {
    /** The one after it; the first after the last. */
    public Drawn next() {
      return new Drawn(blueprint, number % LAST + 1);
    }

    public String id() {
      return DrawnWaters.id(blueprint, number);
    }
  }

  /** What a name stands for; empty if for no drawn water. */
  public static Optional<Drawn> named(String id) {
    Matcher parts = NAME.matcher(id);
    if (!parts.matches()) {
      return Optional.empty();
    }
    for (Blueprint each : Blueprint.values()) {
      if (each.id().equals(parts.group(1))) {
        return Optional.of(new Drawn(each, Long.parseLong(parts.group(2))));
      }
    }
    return Optional.empty();
  }

  /** The water of a name; empty if it is none of these. */
  public static Optional<SurveyedWater> find(String id) {
    return named(id).map(DrawnWaters::surveyed);
  }

  /** Drawn with the marks of region A, which has all kinds. */
  private static SurveyedWater surveyed(Drawn drawn) {
    Waterway water =
        WaterGenerator.water(
            Practice.IALA_A,
            drawn.blueprint(),
            Keel.CRUISER,
            Chance.of(drawn.number(), drawn.blueprint().ordinal()));
    List<SurveyedMark> marks = new ArrayList<>();
    water.marks().forEach(each -> marks.add(surveyed(each)));
    return new SurveyedWater(
        drawn.id(),
        drawn.id(),
        water.depths(),
        water.tide(),
        water.fairways(),
        water.dangers(),
        marks);
  }

  private static SurveyedMark surveyed(PlacedMark mark) {
    BodyShape body = mark.appearance().body();
    boolean fixed = body == BodyShape.BEACON || body == BodyShape.DAYBOARD;
    @Nullable LightCharacter light = mark.appearance().light();
    return new SurveyedMark(
        mark.kind(), mark.position(), mark.serves(), mark.label(), body, fixed, light);
  }
}
