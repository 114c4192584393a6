package withy.core.hydrography;

/** The sea floor and the land before channels are cut into it. */
interface Ground {
  /** Metres below chart datum; negative for what dries and for land. */
  double depth(Spot spot);
}
