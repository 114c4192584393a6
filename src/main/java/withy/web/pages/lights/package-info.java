/** The bench on which an instructor shows lights at their rhythm and compares two of them. */
@NullMarked
package withy.web.pages.lights;

import org.jspecify.annotations.NullMarked;
