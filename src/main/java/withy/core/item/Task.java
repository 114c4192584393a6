package withy.core.item;

import withy.core.mark.Practice;
import withy.core.scenario.Chance;
import withy.core.scenario.TimeOfDay;

/**
 * What an item shall measure and where, and the chance that it is drawn from.
 *
 * @param index of the item in its row, from 0
 */
record Task(Practice practice, Concept concept, TimeOfDay time, int index, Chance chance) {}
