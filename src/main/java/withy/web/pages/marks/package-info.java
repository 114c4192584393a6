/** The marks of each practice, for an instructor to teach from: all of them, each one, posters. */
@NullMarked
package withy.web.pages.marks;

import org.jspecify.annotations.NullMarked;
