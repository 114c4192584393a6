/** The wall: a stretch of water on the projector, for a class to look at together. */
@NullMarked
package withy.web.pages.wall;

import org.jspecify.annotations.NullMarked;
