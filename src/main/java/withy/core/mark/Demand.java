package withy.core.mark;

import withy.core.Term;

/**
 * What a mark asks of the mariner who meets it.
 *
 * @param id lower-case words joined by hyphens
 */
public record Demand(String id) implements Term {
  public static final Demand KEEP_TO_ITS_SIDE = new Demand("keep-to-its-side");
  public static final Demand CHOOSE_CHANNEL = new Demand("choose-channel");
  public static final Demand PASS_NAMED_SIDE = new Demand("pass-named-side");
  public static final Demand STAND_OFF = new Demand("stand-off");
  public static final Demand GO_EITHER_SIDE = new Demand("go-either-side");
  public static final Demand KEEP_CLEAR_OF_WRECK = new Demand("keep-clear-of-wreck");
  public static final Demand KEEP_IN_LINE = new Demand("keep-in-line");
  public static final Demand READ_CHART = new Demand("read-chart");
  public static final Demand READ_NOTICE = new Demand("read-notice");
  public static final Demand BEWARE_OF_DANGER = new Demand("beware-of-danger");
  public static final Demand OBEY_RESTRICTION = new Demand("obey-restriction");
  public static final Demand STAY_OUT = new Demand("stay-out");
  public static final Demand MAY_MOOR = new Demand("may-moor");
  public static final Demand ANCHOR_WITHIN = new Demand("anchor-within");
  public static final Demand LEAVE_TO_SWIMMERS = new Demand("leave-to-swimmers");
  public static final Demand MIND_DIVERS = new Demand("mind-divers");
  public static final Demand TAKE_CARE = new Demand("take-care");
  public static final Demand LEAVE_ALONE = new Demand("leave-alone");
  public static final Demand STAY_OFFSHORE = new Demand("stay-offshore");
  public static final Demand CROSS_OVER = new Demand("cross-over");
  public static final Demand FIND_POSITION = new Demand("find-position");

  /** What no mark asks, though some believe it. */
  public static final Demand GO_AS_YOU_JUDGE = new Demand("go-as-you-judge");

  public static final Demand DO_NOT_MOOR = new Demand("do-not-moor");
  public static final Demand DO_NOT_ANCHOR = new Demand("do-not-anchor");

  @Override
  public String name() {
    return id;
  }

  @Override
  public String toString() {
    return id;
  }
}
