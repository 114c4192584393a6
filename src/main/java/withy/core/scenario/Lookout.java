package withy.core.scenario;

import withy.core.light.LightCharacter;

/** A light ashore that the boat looks out for or steers by, where no mark is asked about. */
public sealed interface Lookout permits RangeLookout, SectorLookout {
  /** The light as the chart states it. */
  LightCharacter light();
}
