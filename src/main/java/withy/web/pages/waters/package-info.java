/** The pages of the waters in which an instructor sets drills. */
@NullMarked
package withy.web.pages.waters;

import org.jspecify.annotations.NullMarked;
