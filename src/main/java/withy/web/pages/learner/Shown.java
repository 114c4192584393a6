package withy.web.pages.learner;

import withy.drawing.Svg;

/** A picture of the feedback and what it shows. */
public record Shown(String caption, Svg picture) {}
