/** What a learner answered: one response to one item, as it was offered and as it was given. */
@NullMarked
package withy.core.response;

import org.jspecify.annotations.NullMarked;
