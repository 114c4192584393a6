package withy.web.pages.learner;

import withy.drawing.Svg;

/**
 * A picture of the feedback and what it shows.
 *
 * @param width the class of its figure
 */
public record Shown(String caption, Svg picture, String width) {
  static Shown of(String caption, Svg picture) {
    return new Shown(caption, picture, "");
  }

  /** The strip of a rhythm, as wide as the page and low. */
  static Shown strip(String caption, Svg picture) {
    return new Shown(caption, picture, "strip");
  }

  /** A chart, which has small words in it. */
  static Shown chart(String caption, Svg picture) {
    return new Shown(caption, picture, "chart");
  }
}
