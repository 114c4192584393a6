package withy.core.hydrography;

import withy.core.Term;

/** The kinds of water that can be generated. */
public enum Blueprint implements Term {
  /** From the open sea between two moles into a harbour. */
  HARBOUR_ENTRANCE,
  /** A river with bends, deeper on their outer side. */
  RIVER,
  /** A funnel of drying flats with a bar and a leading line over it. */
  ESTUARY,
  /** A channel that divides into a preferred and a secondary one. */
  FORK,
  /** Two channels that meet, each with marks of its own. */
  CONVERGING,
  /** A shoal in open water. */
  OFFSHORE_SHOAL,
  /** A rock in open water. */
  ISOLATED_ROCK,
  /** A way along a coast between it and outlying dangers. */
  COASTAL_PASSAGE,
  /** Two channels side by side with a bank between them, each with marks of its own. */
  NEIGHBOURING_CHANNELS;

  /** Whether a leading line leads in from the sea. */
  boolean isLed() {
    return this == HARBOUR_ENTRANCE || this == ESTUARY;
  }
}
