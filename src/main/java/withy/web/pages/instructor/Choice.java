package withy.web.pages.instructor;

import org.jspecify.annotations.Nullable;
import withy.drawing.Svg;

/** Something to tick or to choose. */
public record Choice(String value, String text, boolean chosen, @Nullable Svg picture) {}
