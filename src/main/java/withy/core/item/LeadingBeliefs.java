package withy.core.item;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.waterway.LeadingPair;
import withy.core.waterway.Steering;

/** How beliefs steer by leading marks; null where a belief says nothing of those in sight. */
final class LeadingBeliefs {
  private LeadingBeliefs() {}

  static @Nullable Steering towardRear(Scenario scenario) {
    return ahead(scenario) ? opposite(steering(scenario, 0)) : null;
  }

  static @Nullable Steering asternAsAhead(Scenario scenario) {
    return ahead(scenario) ? null : opposite(steering(scenario, 0));
  }

  static @Nullable Steering gapIgnored(Scenario scenario) {
    boolean off = steering(scenario, 0) != Steering.ON_THE_LINE;
    return off ? Steering.ON_THE_LINE : null;
  }

  /** The other pair whose front mark is nearest the bow. */
  static @Nullable Steering wrongLead(Scenario scenario) {
    List<SightedMark> marks = scenario.marks();
    Bearing heading = scenario.situation().heading();
    int nearest = 0;
    for (int i = 2; i < marks.size(); i += 2) {
      double off = marks.get(i).bearing().angleTo(heading);
      if (nearest == 0 || off < marks.get(nearest).bearing().angleTo(heading)) {
        nearest = i;
      }
    }
    return nearest == 0 ? null : steering(scenario, nearest);
  }

  /** Ahead to the side on which the marks bear, astern so that the stern comes to point at them. */
  static @Nullable Steering bowOnMarks(Scenario scenario) {
    Bearing heading = scenario.situation().heading();
    Bearing end = ahead(scenario) ? heading : heading.reciprocal();
    double off = scenario.mark().bearing().relativeTo(end);
    return off < 0 ? Steering.STEER_PORT : Steering.STEER_STARBOARD;
  }

  /** The stream comes from the side to which the bow is held off the marks. */
  static @Nullable Steering intoTheStream(Scenario scenario) {
    return opposite(bowOnMarks(scenario));
  }

  /** What the pair that begins at an index of the marks asks for. */
  static @Nullable Steering steering(Scenario scenario, int index) {
    return pair(scenario, index).steering(scenario.situation().heading()).orElse(null);
  }

  static LeadingPair pair(Scenario scenario, int index) {
    List<SightedMark> marks = scenario.marks();
    return new LeadingPair(marks.get(index).bearing(), marks.get(index + 1).bearing());
  }

  private static boolean ahead(Scenario scenario) {
    return pair(scenario, 0).ahead(scenario.situation().heading());
  }

  private static @Nullable Steering opposite(@Nullable Steering steering) {
    return steering == null ? null : steering.opposite();
  }
}
