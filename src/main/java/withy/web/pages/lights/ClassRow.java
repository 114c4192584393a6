package withy.web.pages.lights;

import org.jspecify.annotations.Nullable;
import withy.drawing.Svg;
import withy.web.pages.Link;

/**
 * A class of light with an example.
 *
 * @param show puts the example on the bench
 * @param compare puts it beside the light that is there; null where there is none
 */
record ClassRow(String name, String definition, Svg strip, Link show, @Nullable Link compare) {}
