package withy.core.response;

import withy.core.item.Composition;

/**
 * A composition that an instructor keeps under a title.
 *
 * @param title for people; never blank
 */
public record DrillSet(String title, Composition composition) {
  public DrillSet {
    if (title.isBlank()) {
      throw new IllegalArgumentException("a drill set has a title");
    }
  }
}
