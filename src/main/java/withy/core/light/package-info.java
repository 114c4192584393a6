/** What the light of a mark does: its character, its rhythm, its timeline. */
@NullMarked
package withy.core.light;

import org.jspecify.annotations.NullMarked;
