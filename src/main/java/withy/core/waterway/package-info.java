/** The water between the marks: its conventional direction of buoyage. */
@NullMarked
package withy.core.waterway;

import org.jspecify.annotations.NullMarked;
