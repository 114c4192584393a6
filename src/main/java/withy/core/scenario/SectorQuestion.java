package withy.core.scenario;

import withy.core.Term;

/** What is asked about a light with sectors. */
public enum SectorQuestion implements Term {
  /** Which colour is seen on a true bearing, the sectors being lettered on the chart. */
  BEARING,
  /** The same for a bearing relative to the bow. */
  BOW,
  /** Which colour is seen beside the white sector that leads in, by the rule of the region. */
  FAIRWAY,
  /** On which bearing the white sector that leads in ends, given the line on the chart. */
  LIMIT
}
