package withy.web.pages.learner;

import withy.drawing.Svg;

/**
 * A picture of the feedback and what it shows.
 *
 * @param strip whether it is the strip of a rhythm, as wide as the page and low
 */
public record Shown(String caption, Svg picture, boolean strip) {
  static Shown of(String caption, Svg picture) {
    return new Shown(caption, picture, false);
  }
}
