package withy.core.scenario;

import withy.core.Term;
import withy.core.geometry.Polyline;

/**
 * A track that is drawn on a chart with a letter.
 *
 * @param letter A to D
 */
public record PlottedTrack(String letter, Polyline line, Purpose purpose) {
  /** What whoever plotted it had in mind. */
  public enum Purpose implements Term {
    /** To keep the clearance off mark and danger. */
    CLEAR,
    /** To pass as near to the mark as can be. */
    ALONGSIDE,
    /** To keep so many hundred metres off as cables were asked. */
    HUNDREDS,
    /** To keep the clearance off the mark on whichever side. */
    ANY_SIDE,
    /** To turn in as soon as the mark is passed. */
    TURN_IN
  }
}
