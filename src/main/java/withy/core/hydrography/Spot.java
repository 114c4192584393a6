package withy.core.hydrography;

import java.util.List;
import withy.core.geometry.Polyline.Foot;
import withy.core.geometry.Position;

/**
 * A place as a layout looks at it.
 *
 * @param inland metres ahead of the middle of the frame
 * @param abeam metres to starboard of it
 * @param feet where each channel comes nearest, in the order in which they were cut
 */
record Spot(Position place, double inland, double abeam, List<Foot> feet) {}
