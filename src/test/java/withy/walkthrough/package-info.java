/** Whole jobs of people, from the first step to the last, told as stories. */
@NullMarked
package withy.walkthrough;

import org.jspecify.annotations.NullMarked;
