package withy.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import withy.core.geometry.Bearing;
import withy.core.geometry.LocalPlane;
import withy.core.geometry.Position;
import withy.core.hydrography.SurveyedMark;
import withy.core.mark.MarkKind;

/** Tells the front mark of a leading line from the rear one: the line runs from seaward. */
final class LeadingLines {
  /** Metres off a line at which a mark still stands on it, and degrees its bearing may be out. */
  private static final double ON_THE_LINE = 15;

  private static final double BEARING_WITHIN = 2;

  private final List<SurveyedFeature> lines;
  private final LocalPlane plane;
  private final Problems problems;

  LeadingLines(List<SurveyedFeature> features, LocalPlane plane, Problems problems) {
    this.lines =
        features.stream().filter(each -> each.type() == FeatureType.NAVIGATION_LINE).toList();
    this.plane = plane;
    this.problems = problems;
  }

  /** The marks, in the same order, with the rear ones told. */
  List<SurveyedMark> told(Map<SurveyedFeature, SurveyedMark> read, List<SurveyedMark> marks) {
    List<SurveyedMark> told = new ArrayList<>(marks);
    List<SurveyedMark> onLines = new ArrayList<>();
    for (SurveyedFeature line : lines) {
      List<Position> ends = line.parts(plane).get(0);
      Position start = ends.get(0);
      Bearing bearing = start.bearingTo(ends.get(ends.size() - 1));
      compare(line, bearing);
      List<SurveyedMark> pair =
          marks.stream()
              .filter(each -> each.kind().isLeading())
              .filter(each -> off(start, bearing, each.position()) <= ON_THE_LINE)
              .sorted(Comparator.comparingDouble(each -> start.distanceTo(each.position())))
              .toList();
      if (pair.size() == 2) {
        told.set(marks.indexOf(pair.get(1)), rear(pair.get(1)));
      } else {
        problems.add(line.place(), "leading-pair", pair.size());
      }
      onLines.addAll(pair);
    }
    read.forEach(
        (feature, mark) -> {
          if (mark.kind().isLeading()
              && onLines.stream().noneMatch(each -> each.position().equals(mark.position()))) {
            problems.add(feature.place(), "no-leading-line");
          }
        });
    return told;
  }

  private void compare(SurveyedFeature line, Bearing bearing) {
    Double stated = line.attributes().number("orientationValue", 0, 360);
    if (stated != null && Bearing.of(stated).angleTo(bearing) > BEARING_WITHIN) {
      problems.add(
          line.attributes().place("orientationValue"),
          "orientation",
          stated,
          Math.rint(10 * bearing.degrees()) / 10);
    }
  }

  private static double off(Position start, Bearing bearing, Position place) {
    double angle = StrictMath.toRadians(bearing.degrees());
    double x = place.x() - start.x();
    double y = place.y() - start.y();
    return Math.abs(x * StrictMath.cos(angle) - y * StrictMath.sin(angle));
  }

  private static SurveyedMark rear(SurveyedMark mark) {
    return new SurveyedMark(
        MarkKind.LEADING_REAR,
        mark.position(),
        null,
        mark.label(),
        mark.body(),
        mark.fixed(),
        mark.light());
  }
}
