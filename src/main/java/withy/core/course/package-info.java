/** Courses: what to drill on which day before a practical. */
@NullMarked
package withy.core.course;

import org.jspecify.annotations.NullMarked;
