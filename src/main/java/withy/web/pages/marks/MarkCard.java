package withy.web.pages.marks;

import java.util.List;
import withy.drawing.Svg;

/**
 * One mark among others.
 *
 * @param pictures of the mark, or of its light and the strip of it
 * @param note what stands below the name: at night the light
 */
record MarkCard(String name, String href, List<Svg> pictures, String note) {}
