package withy.core.item;

import withy.core.Term;

/** What kind of question an item puts. */
public enum Form implements Term {
  IDENTIFY,
  SIDE,
  CHANNEL_CHOICE,
  CARDINAL_PASS,
  DIRECTION,
  LIGHT,
  ASSEMBLE,
  NUMBER,
  LEADING,
  CLEARANCE,
  CHART_OVER_RULE,
  REGULATORY,
  PASSAGE
}
