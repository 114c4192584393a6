/**
 * What navigation marks look like, what they mean, and the rules that say on which side to pass.
 */
@NullMarked
package withy.core.mark;

import org.jspecify.annotations.NullMarked;
