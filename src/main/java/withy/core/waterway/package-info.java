/** The water between the marks: its conventional direction of buoyage, its leading lines. */
@NullMarked
package withy.core.waterway;

import org.jspecify.annotations.NullMarked;
