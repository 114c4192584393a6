package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import withy.core.geometry.Bearing;
import withy.core.mark.MarkKind;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;

/** How to steer by leading marks, worked out anew from bearings by the sines of angles. */
final class LeadingTruth {
  private LeadingTruth() {}

  static String steering(Scenario scenario) {
    List<SightedMark> marks = scenario.marks();
    assertThat(marks.size()).isIn(2, 6);
    for (int i = 0; i < marks.size(); i += 2) {
      pairStandsAsItMay(marks.get(i), marks.get(i + 1));
    }
    chartTellsThePair(marks);
    double open = sine(marks.get(1).bearing(), marks.get(0).bearing());
    if (StrictMath.abs(open) < StrictMath.sin(StrictMath.toRadians(0.31))) {
      return "on-the-line";
    }
    boolean astern = cosine(scenario.situation().heading(), marks.get(0).bearing()) < 0;
    return (open < 0) != astern ? "steer-port" : "steer-starboard";
  }

  /** In line or clearly not, the front mark nearer, the boat where she sees them so. */
  private static void pairStandsAsItMay(SightedMark front, SightedMark rear) {
    assertThat(front.kind().equals(MarkKind.LEADING_FRONT)).isTrue();
    assertThat(rear.kind().equals(MarkKind.LEADING_REAR)).isTrue();
    assertThat(front.distance()).isLessThan(rear.distance());
    double open = front.bearing().angleTo(rear.bearing());
    assertThat(open <= 0.3 + 1e-9 || open > 1).as("open by %s", open).isTrue();
    double line = front.bearing().degrees();
    double between = bearingFromTo(front, rear);
    assertThat(Bearing.of(between).angleTo(Objects.requireNonNull(front.lead())))
        .as("the line through the marks from the boat's bearings, charted %s", line)
        .isLessThan(1);
  }

  private static double bearingFromTo(SightedMark front, SightedMark rear) {
    double east = east(rear) - east(front);
    double north = north(rear) - north(front);
    return StrictMath.toDegrees(StrictMath.atan2(east, north));
  }

  private static void chartTellsThePair(List<SightedMark> marks) {
    Bearing charted = Objects.requireNonNull(marks.get(0).lead());
    for (int i = 2; i < marks.size(); i += 2) {
      assertThat(marks.get(i).bearing().angleTo(charted))
          .isGreaterThan(marks.get(0).bearing().angleTo(charted) + 5);
    }
  }

  private static double east(SightedMark mark) {
    return mark.distance() * StrictMath.sin(StrictMath.toRadians(mark.bearing().degrees()));
  }

  private static double north(SightedMark mark) {
    return mark.distance() * StrictMath.cos(StrictMath.toRadians(mark.bearing().degrees()));
  }

  private static double sine(Bearing from, Bearing to) {
    return StrictMath.sin(StrictMath.toRadians(to.degrees() - from.degrees()));
  }

  private static double cosine(Bearing one, Bearing other) {
    return StrictMath.cos(StrictMath.toRadians(other.degrees() - one.degrees()));
  }
}
