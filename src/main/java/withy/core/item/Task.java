package withy.core.item;

import withy.core.mark.Practice;
import withy.core.scenario.Chance;
import withy.core.scenario.TimeOfDay;

/** What an item shall measure and where, and the chance that it is drawn from. */
record Task(Practice practice, Concept concept, TimeOfDay time, Chance chance) {}
