package withy.core.mark;

import withy.core.Term;
import withy.core.geometry.Bearing;

/** The quarter of the compass on which a cardinal mark has its safe water. */
public enum Quadrant implements Term {
  NORTH,
  EAST,
  SOUTH,
  WEST;

  /** The middle of the quadrant: 000, 090, 180 or 270. */
  public Bearing middle() {
    return Bearing.of(90.0 * ordinal());
  }

  /** The quadrant across the mark. */
  public Quadrant opposite() {
    return values()[(ordinal() + 2) % 4];
  }

  /** The quadrant that a bearing from the mark lies in; a limit belongs to the one clockwise. */
  public static Quadrant of(Bearing fromMark) {
    return values()[(int) (fromMark.plus(45).degrees() / 90)];
  }
}
