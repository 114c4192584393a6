/**
 * What to ask a learner next: the concept that is least settled, and of it the item that tells
 * most.
 */
@NullMarked
package withy.core.drill;

import org.jspecify.annotations.NullMarked;
