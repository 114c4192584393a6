/** The plane that boat and marks share: bearings and positions. */
@NullMarked
package withy.core.geometry;

import org.jspecify.annotations.NullMarked;
