/** The pages of a school: its instructors, how they invite colleagues, and how those come in. */
@NullMarked
package withy.web.pages.colleagues;

import org.jspecify.annotations.NullMarked;
