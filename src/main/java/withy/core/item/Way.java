package withy.core.item;

import withy.core.geometry.Polyline;

/**
 * How a boat sails that acts on an option.
 *
 * @param leastDepth metres of water under the surface where it is least, tide added
 */
public record Way(Polyline track, double leastDepth) {}
