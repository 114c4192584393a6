/** The pages of courses: what classes prepare for, and the plan of the days until then. */
@NullMarked
package withy.web.pages.courses;

import org.jspecify.annotations.NullMarked;
