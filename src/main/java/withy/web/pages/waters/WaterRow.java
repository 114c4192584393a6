package withy.web.pages.waters;

import withy.drawing.Svg;

/** A water in the list. */
public record WaterRow(String id, String title, String about, Svg chart) {}
