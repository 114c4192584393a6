package withy.web.pages.lights;

import java.util.List;
import withy.drawing.Svg;
import withy.web.pages.Fact;

/**
 * A light on the bench.
 *
 * @param character as this project writes it
 * @param view the light in the dark
 * @param strip light and dark over time, on one scale with the other light
 */
record BenchLight(
    String character, String className, String definition, Svg view, Svg strip, List<Fact> facts) {}
