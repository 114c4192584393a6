/** Surveys, draws and marks stretches of water: what an authority does before a boat sails. */
@NullMarked
package withy.core.hydrography;

import org.jspecify.annotations.NullMarked;
