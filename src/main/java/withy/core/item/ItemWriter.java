package withy.core.item;

import withy.core.hydrography.SurveyedWater;
import withy.core.mark.Practice;
import withy.core.scenario.TimeOfDay;

/** Writes the items of one form. */
interface ItemWriter {
  Form form();

  /** Whether items of this form can measure a concept under a practice at a time of day. */
  boolean measures(Concept concept, Practice practice, TimeOfDay time);

  /**
   * Whether such items can also be set in a water that is given: it must have what they are about,
   * and what the rules say of that must be borne out by its depths. No form can unless it says so.
   */
  default boolean measuresIn(
      SurveyedWater water, Concept concept, Practice practice, TimeOfDay time) {
    return false;
  }

  /** An item that measures what the task asks for; only for tasks that it measures. */
  Draft write(Task task);
}
