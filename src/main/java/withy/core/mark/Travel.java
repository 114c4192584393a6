package withy.core.mark;

import withy.core.Term;

/**
 * How the boat's heading lies to the conventional direction of buoyage; none where it does not
 * matter.
 */
public enum Travel implements Term {
  WITH,
  AGAINST,
  NONE
}
