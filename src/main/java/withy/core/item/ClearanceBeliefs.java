package withy.core.item;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.scenario.Clearance;
import withy.core.scenario.PlottedTrack;
import withy.core.scenario.PlottedTrack.Purpose;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;

/**
 * Which of several tracks beliefs choose, and how far off they find one to pass; null where a
 * belief says nothing of what is drawn.
 */
final class ClearanceBeliefs {
  private ClearanceBeliefs() {}

  /** M30: passes as close as possible. */
  static @Nullable String alongside(Scenario scenario) {
    return chosen(scenario, Purpose.ALONGSIDE);
  }

  /** Takes a cable for a hundred metres. */
  static @Nullable String hundreds(Scenario scenario) {
    @Nullable Clearance drawn = drawn(scenario);
    if (drawn == null || drawn.cables() > 0) {
      return chosen(scenario, Purpose.HUNDREDS);
    }
    return word(line(drawn).foot(target(drawn)).distance() / 100);
  }

  /** Takes the danger to lie at its mark, so that any side will do at the distance asked. */
  static @Nullable String anySide(Scenario scenario) {
    return chosen(scenario, Purpose.ANY_SIDE);
  }

  /** Takes the danger to be passed with its mark. */
  static @Nullable String turnIn(Scenario scenario) {
    return chosen(scenario, Purpose.TURN_IN);
  }

  /** Measures to the mark where the danger lies beyond it, and the reverse. */
  static @Nullable String toTheOther(Scenario scenario) {
    @Nullable Clearance drawn = drawn(scenario);
    if (drawn == null || drawn.cables() > 0) {
      return null;
    }
    Position other =
        target(drawn).equals(drawn.danger().at()) ? drawn.mark().position() : drawn.danger().at();
    return other.equals(target(drawn))
        ? null
        : word(line(drawn).foot(other).distance() / Clearance.CABLE);
  }

  private static @Nullable String chosen(Scenario scenario, Purpose purpose) {
    @Nullable Clearance drawn = drawn(scenario);
    if (drawn == null || drawn.cables() == 0) {
      return null;
    }
    Optional<PlottedTrack> track = drawn.track(purpose);
    return track.map(each -> value(each.letter())).orElse(null);
  }

  /** What is measured to: the danger if it has a sign of its own, else the mark. */
  static Position target(Clearance drawn) {
    return ClearanceWriter.hasSign(drawn.danger()) ? drawn.danger().at() : drawn.mark().position();
  }

  private static Polyline line(Clearance drawn) {
    return drawn.tracks().get(0).line();
  }

  /** A distance in cables as an answer has it. */
  static String word(double cables) {
    return TypedNumber.word(Math.round(cables * 10) / 10.0);
  }

  /** The value of the option for a track: {@code track-a}. */
  static String value(String letter) {
    return "track-" + letter.toLowerCase(Locale.ROOT);
  }

  private static @Nullable Clearance drawn(Scenario scenario) {
    @Nullable Sailing sailing = scenario.sailing();
    return sailing == null ? null : sailing.clearance();
  }
}
