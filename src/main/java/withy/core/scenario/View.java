package withy.core.scenario;

import withy.core.Term;

/**
 * How the mark that is asked about is seen: near by day, from afar as a silhouette, or only its
 * light.
 */
public enum View implements Term {
  NEAR,
  DISTANT,
  LIGHT
}
