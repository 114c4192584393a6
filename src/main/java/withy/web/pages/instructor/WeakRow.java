package withy.web.pages.instructor;

import withy.drawing.Svg;

/** One of the weakest concepts. */
public record WeakRow(String id, String concept, Svg plot, String words) {}
