package withy.core.mark;

import withy.core.Term;

/** The groups in which the standards list marks, in their order; national groups follow. */
public enum MarkGroup implements Term {
  LATERAL,
  PREFERRED_CHANNEL,
  CARDINAL,
  ISOLATED_DANGER,
  SAFE_WATER,
  SPECIAL,
  NEW_DANGER,
  LEADING,
  /** Information and regulatory marks with orange symbols. */
  REGULATORY,
  /** Marks for mooring, swimming, diving and the like. */
  LOCAL_USE,
  /** Beacons and daybeacons of the classes above. */
  FIXED,
  /** Dayboards that stand beside no channel and tell no side. */
  NOTICE_BOARD,
  INTRACOASTAL,
  WESTERN_RIVERS,
  PRIVATE,
  /** Withies and brooms that mark a creek. */
  WITHIES
}
