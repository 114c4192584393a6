package withy.core.item;

import withy.core.mark.Practice;
import withy.core.scenario.TimeOfDay;

/** Writes the items of one form. */
interface ItemWriter {
  Form form();

  /** Whether items of this form can measure a concept under a practice at a time of day. */
  boolean measures(Concept concept, Practice practice, TimeOfDay time);

  /** An item that measures what the task asks for; only for tasks that it measures. */
  Draft write(Task task);
}
