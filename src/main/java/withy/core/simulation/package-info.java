/**
 * Classes whose errors are planted, through the generator, the choice of items and the statistics
 * that real classes meet: how soon and how surely what was planted is found.
 */
@NullMarked
package withy.core.simulation;

import org.jspecify.annotations.NullMarked;
