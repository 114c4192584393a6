/** What is asked about a scenario: the item, its options, and the belief behind each wrong one. */
@NullMarked
package withy.core.item;

import org.jspecify.annotations.NullMarked;
