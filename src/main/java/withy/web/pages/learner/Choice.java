package withy.web.pages.learner;

import org.jspecify.annotations.Nullable;
import withy.drawing.Svg;

/**
 * One option of an item.
 *
 * @param picture null where the text says all
 * @param whenStill whether it stands in for a light that was stopped
 */
public record Choice(String value, String text, @Nullable Svg picture, boolean whenStill) {}
