package withy.usecase;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import withy.core.course.Session;
import withy.core.hydrography.SurveyedWater;
import withy.core.response.DrillSet;

/**
 * A day of a course as its instructor planned it.
 *
 * @param water in which its drill lies; null for none in particular
 * @param set what is drilled in place of what the plan proposes; null: what it proposes
 */
public record PlannedSession(
    Session session, @Nullable SurveyedWater water, @Nullable DrillSet set) {
  /** The day itself. */
  public LocalDate on() {
    return session.on();
  }

  PlannedSession later(long days) {
    return new PlannedSession(session.later(days), water, set);
  }

  PlannedSession with(@Nullable DrillSet other) {
    return new PlannedSession(session, water, other);
  }
}
