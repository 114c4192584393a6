package withy.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.geometry.Area;
import withy.core.geometry.Geodetic;
import withy.core.geometry.LocalPlane;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.hydrography.DepthSurvey;
import withy.core.hydrography.DepthSurvey.DepthArea;
import withy.core.hydrography.DepthSurvey.Dredged;
import withy.core.hydrography.DepthSurvey.Sounding;
import withy.core.hydrography.LateralCheck;
import withy.core.hydrography.SurveyedDepths;
import withy.core.hydrography.SurveyedMark;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Message;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.DepthField;
import withy.core.waterway.Fairway;
import withy.core.waterway.Keel;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/** Makes a water of the features of a file, and holds its marks against its depths. */
final class WaterBuilder {
  /** Metres across that a water may be. */
  static final double SMALLEST = 200;

  static final double LARGEST = 10_000;
  private static final double DEEPEST = 500;
  private static final double HIGHEST = -20;
  private static final double DANGER_RADIUS = 25;
  private static final int MOST_RANGES = 40;

  /** Most points of a fairway: a passage is held against every stretch of it, and that again. */
  private static final int MOST_POINTS = 400;

  private static final List<String> UNNAMED =
      List.of("main", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth");

  private final List<SurveyedFeature> features;
  private final Practice practice;
  private final double tide;
  private final Problems problems;
  private final List<String> named = new ArrayList<>();
  private LocalPlane plane = LocalPlane.at(new Geodetic(0, 0));

  WaterBuilder(List<SurveyedFeature> features, Practice practice, double tide, Problems problems) {
    this.features = features;
    this.practice = practice;
    this.tide = tide;
    this.problems = problems;
  }

  /** The water; null where something is wrong, which is noted. */
  @Nullable SurveyedWater water(String id, String title) {
    @Nullable Extent extent = Extent.of(features);
    if (extent == null) {
      problems.add("features", "no-depths");
      return null;
    }
    plane = LocalPlane.at(extent.southWest());
    Position corner = plane.position(extent.northEast());
    boolean fits = corner.x() <= LARGEST && corner.y() <= LARGEST;
    if (!fits || corner.x() < SMALLEST || corner.y() < SMALLEST) {
      problems.add("features", "extent", Math.rint(corner.x()), Math.rint(corner.y()));
      return null;
    }
    return water(id, title, corner);
  }

  private @Nullable SurveyedWater water(String id, String title, Position corner) {
    Map<SurveyedFeature, SurveyedMark> read = marks();
    List<Dredged> fairways = fairways();
    DepthSurvey survey = new DepthSurvey(areas(), land(), soundings(), fairways, dangers());
    inside(corner);
    sailed();
    List<SurveyedMark> marks =
        new Belonging(named, fairways.stream().map(Dredged::fairway).toList(), problems).of(read);
    marks = new LeadingLines(features, plane, problems).told(read, marks);
    if (!problems.isEmpty()) {
      return null;
    }
    DepthField depths = SurveyedDepths.of(survey, new Position(0, 0), corner);
    SurveyedWater water =
        new SurveyedWater(
            id,
            title,
            depths,
            tide,
            fairways.stream().map(Dredged::fairway).toList(),
            survey.dangers(),
            marks);
    agreement(water, List.copyOf(read.keySet()));
    return problems.isEmpty() ? water : null;
  }

  private List<SurveyedFeature> of(FeatureType type) {
    return features.stream().filter(each -> each.type() == type).toList();
  }

  /** Whether there is anything to sail; one that is there and unfit is told of by itself. */
  private void sailed() {
    boolean any =
        features.stream()
            .anyMatch(each -> each.type() == FeatureType.FAIRWAY || each.type().isDanger());
    if (!any && problems.isEmpty()) {
      problems.add("features", "nothing-to-sail");
    }
  }

  private void inside(Position corner) {
    for (SurveyedFeature each : features) {
      if (each.type().isMark() || each.type().isDanger()) {
        Position at = each.at(plane);
        if (at.x() < 0 || at.y() < 0 || at.x() > corner.x() || at.y() > corner.y()) {
          problems.add(each.place() + ".geometry", "outside");
        }
      }
    }
  }

  private List<DepthArea> areas() {
    List<DepthArea> areas = new ArrayList<>();
    List<String> ranges = new ArrayList<>();
    for (SurveyedFeature each : of(FeatureType.DEPTH_AREA)) {
      Attributes attributes = each.attributes();
      Double least = attributes.requiredNumber("depthRangeMinimumValue", HIGHEST, DEEPEST);
      Double most = attributes.requiredNumber("depthRangeMaximumValue", HIGHEST, DEEPEST);
      if (least == null || most == null) {
        continue;
      }
      if (!(least < most)) {
        problems.add(attributes.place("depthRangeMaximumValue"), "range", least, most);
      } else {
        areas.add(new DepthArea(new Area(each.parts(plane)), least, most));
        ranges.add(least + " " + most);
      }
    }
    long different = ranges.stream().distinct().count();
    if (different > MOST_RANGES) {
      problems.add("features", "too-many-ranges", different, MOST_RANGES);
    }
    return areas;
  }

  private List<Area> land() {
    return of(FeatureType.LAND_AREA).stream().map(each -> new Area(each.parts(plane))).toList();
  }

  private List<Sounding> soundings() {
    List<Sounding> soundings = new ArrayList<>();
    for (SurveyedFeature each : of(FeatureType.SOUNDING)) {
      Double stated = each.attributes().number("valueOfSounding", HIGHEST, DEEPEST);
      for (int i = 0; i < each.shape().parts().size(); i++) {
        double third = each.shape().heights().get(i);
        double depth = stated == null ? third : stated;
        if (depth >= HIGHEST && depth <= DEEPEST) {
          Position at = plane.position(each.shape().parts().get(i).get(0));
          soundings.add(new Sounding(at, depth));
        } else if (Double.isNaN(third)) {
          problems.add(each.place() + ".properties.valueOfSounding", "missing");
          break;
        } else {
          problems.add(each.place() + ".geometry.coordinates", "number", third, HIGHEST, DEEPEST);
          break;
        }
      }
    }
    return soundings;
  }

  private List<Dredged> fairways() {
    List<Dredged> fairways = new ArrayList<>();
    for (SurveyedFeature each : of(FeatureType.FAIRWAY)) {
      Double width = each.attributes().requiredNumber("width", 10, 2000);
      Double kept = each.attributes().number("depthRangeMinimumValue", HIGHEST, DEEPEST);
      String id = id(each, named);
      List<Position> line = each.parts(plane).get(0);
      if (line.size() > MOST_POINTS) {
        String at = each.place() + ".geometry.coordinates";
        problems.add(at, "too-many-points", line.size(), MOST_POINTS);
      } else if (width != null && id != null) {
        fairways.add(new Dredged(new Fairway(id, new Polyline(line), width), kept));
      }
    }
    return fairways;
  }

  private @Nullable String id(SurveyedFeature fairway, List<String> taken) {
    String id = fairway.id();
    if (id == null && taken.size() < UNNAMED.size()) {
      id = UNNAMED.get(taken.size());
    }
    if (id == null || !id.matches("[a-z]+(-[a-z]+)*") || taken.contains(id)) {
      problems.add(fairway.place() + ".id", "fairway-id", id == null ? "" : id);
      return null;
    }
    taken.add(id);
    return id;
  }

  private List<Danger> dangers() {
    List<Danger> dangers = new ArrayList<>();
    for (SurveyedFeature each : features) {
      if (each.type().isDanger()) {
        Double depth = each.attributes().requiredNumber("valueOfSounding", HIGHEST, DEEPEST);
        Double radius = each.attributes().number("radius", 5, 1000);
        if (depth != null) {
          double wide = radius == null ? DANGER_RADIUS : radius;
          dangers.add(new Danger(kind(each.type()), each.at(plane), wide, depth));
        }
      }
    }
    return dangers;
  }

  private static DangerKind kind(FeatureType type) {
    return switch (type) {
      case UNDERWATER_AWASH_ROCK -> DangerKind.ROCK;
      case WRECK -> DangerKind.WRECK;
      default -> DangerKind.SHOAL;
    };
  }

  private Map<SurveyedFeature, SurveyedMark> marks() {
    MarkReader reader = new MarkReader(practice, problems, plane);
    Map<SurveyedFeature, SurveyedMark> marks = new LinkedHashMap<>();
    for (SurveyedFeature each : features) {
      if (each.type().isMark()) {
        Optional<SurveyedMark> mark = reader.read(each);
        mark.ifPresent(found -> marks.put(each, found));
      }
    }
    return marks;
  }

  private Message named(MarkKind kind) {
    return Message.of(MarkingRules.mark(practice, kind).nameKey());
  }

  /** Whether the depths bear out the lateral marks; the system has every kind, so none is lost. */
  private void agreement(SurveyedWater water, List<SurveyedFeature> sources) {
    Waterway marked = water.marked(practice, Chance.of(0, 0));
    for (int i = 0; i < sources.size(); i++) {
      PlacedMark mark = marked.marks().get(i);
      Message kind = named(mark.kind());
      String place = sources.get(i).place();
      LateralCheck.of(practice, marked, mark, Keel.CRUISER)
          .ifPresent(
              check -> {
                switch (check) {
                  case CONTRADICTED ->
                      problems.add(
                          place + ".properties.categoryOfLateralMark", "water-contradicts", kind);
                  case OPEN_BOTH_SIDES -> problems.remark(place, "open-both-sides", kind);
                  case SHALLOW_BOTH_SIDES -> problems.remark(place, "shallow-both-sides", kind);
                  case BORNE_OUT -> {}
                }
              });
    }
  }
}
