/** The answers behind the figures of a review, and the items that they answer. */
@NullMarked
package withy.web.pages.evidence;

import org.jspecify.annotations.NullMarked;
