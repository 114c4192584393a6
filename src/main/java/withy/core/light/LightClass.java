package withy.core.light;

import java.util.List;

/**
 * The classes of rhythm, as IHO Chart 1 P 10 and IHO S-12 tell them apart, and alternating lights.
 *
 * <p>Rates are flashes a minute and hold for the flashes of one uninterrupted sequence: quick 50 to
 * 79, very quick 80 to 159, ultra quick 160 to 300 (Chart 1 P 10.6 to P 10.8, IALA E-110).
 */
public enum LightClass {
  FIXED("fixed", "F", Form.NONE, Rate.ANY),
  OCCULTING("occulting", "Oc", Form.SINGLE, Rate.ANY),
  GROUP_OCCULTING("group-occulting", "Oc", Form.GROUP, Rate.ANY),
  COMPOSITE_GROUP_OCCULTING("composite-group-occulting", "Oc", Form.COMPOSITE, Rate.ANY),
  ISOPHASE("isophase", "Iso", Form.SINGLE, Rate.ANY),
  FLASHING("flashing", "Fl", Form.SINGLE, Rate.SLOW),
  GROUP_FLASHING("group-flashing", "Fl", Form.GROUP, Rate.SLOW),
  COMPOSITE_GROUP_FLASHING("composite-group-flashing", "Fl", Form.COMPOSITE, Rate.SLOW),
  LONG_FLASHING("long-flashing", "LFl", Form.SINGLE, Rate.ANY),
  GROUP_LONG_FLASHING("group-long-flashing", "LFl", Form.GROUP, Rate.ANY),
  QUICK("quick", "Q", Form.SINGLE, Rate.QUICK),
  GROUP_QUICK("group-quick", "Q", Form.GROUP, Rate.QUICK),
  GROUP_QUICK_AND_LONG_FLASH("group-quick-and-long-flash", "Q", Form.GROUP, Rate.QUICK),
  INTERRUPTED_QUICK("interrupted-quick", "IQ", Form.NONE, Rate.QUICK),
  VERY_QUICK("very-quick", "VQ", Form.SINGLE, Rate.VERY_QUICK),
  GROUP_VERY_QUICK("group-very-quick", "VQ", Form.GROUP, Rate.VERY_QUICK),
  GROUP_VERY_QUICK_AND_LONG_FLASH(
      "group-very-quick-and-long-flash", "VQ", Form.GROUP, Rate.VERY_QUICK),
  INTERRUPTED_VERY_QUICK("interrupted-very-quick", "IVQ", Form.NONE, Rate.VERY_QUICK),
  ULTRA_QUICK("ultra-quick", "UQ", Form.SINGLE, Rate.ULTRA_QUICK),
  INTERRUPTED_ULTRA_QUICK("interrupted-ultra-quick", "IUQ", Form.NONE, Rate.ULTRA_QUICK),
  MORSE("morse", "Mo", Form.LETTERS, Rate.ANY),
  FIXED_AND_FLASHING("fixed-and-flashing", "FFl", Form.ANY_GROUP, Rate.SLOW),
  ALTERNATING("alternating", "Al", Form.NONE, Rate.ANY),
  ALTERNATING_FLASHING("alternating-flashing", "Al.Fl", Form.ANY, Rate.ANY),
  ALTERNATING_OCCULTING("alternating-occulting", "Al.Oc", Form.ANY_GROUP, Rate.ANY);

  private final String id;
  private final String abbreviation;
  private final Form form;
  private final Rate rate;

  LightClass(String id, String abbreviation, Form form, Rate rate) {
    this.id = id;
    this.abbreviation = abbreviation;
    this.form = form;
    this.rate = rate;
  }

  /** The class's name in data, such as {@code group-flashing}. */
  public String id() {
    return id;
  }

  /** The class as charts abbreviate it, without its group: {@code Fl}, {@code Q}, {@code Al.Oc}. */
  public String abbreviation() {
    return abbreviation;
  }

  /** Whether the light shows different colours in turn, so that several colours are no sectors. */
  public boolean alternates() {
    return this == ALTERNATING || this == ALTERNATING_FLASHING || this == ALTERNATING_OCCULTING;
  }

  /** Whether a group of short flashes is followed by one long flash. */
  public boolean endsWithLongFlash() {
    return this == GROUP_QUICK_AND_LONG_FLASH || this == GROUP_VERY_QUICK_AND_LONG_FLASH;
  }

  /** Whether a sequence of flashes without a number is cut off by a long eclipse. */
  boolean interrupted() {
    return this == INTERRUPTED_QUICK
        || this == INTERRUPTED_VERY_QUICK
        || this == INTERRUPTED_ULTRA_QUICK;
  }

  /** The class that the same abbreviation has with this group; itself when the form is free. */
  LightClass withGroup(List<Integer> group) {
    return switch (this) {
      case OCCULTING -> bySize(group, this, GROUP_OCCULTING, COMPOSITE_GROUP_OCCULTING);
      case FLASHING -> bySize(group, this, GROUP_FLASHING, COMPOSITE_GROUP_FLASHING);
      case LONG_FLASHING -> bySize(group, this, GROUP_LONG_FLASHING, GROUP_LONG_FLASHING);
      case QUICK -> bySize(group, this, GROUP_QUICK, GROUP_QUICK);
      case VERY_QUICK -> bySize(group, this, GROUP_VERY_QUICK, GROUP_VERY_QUICK);
      default -> this;
    };
  }

  private static LightClass bySize(
      List<Integer> group, LightClass single, LightClass one, LightClass several) {
    return group.isEmpty() ? single : group.size() == 1 ? one : several;
  }

  Form form() {
    return form;
  }

  Rate rate() {
    return rate;
  }

  /** What may stand in the brackets after a class. */
  enum Form {
    NONE,
    /** One flash or eclipse a period. */
    SINGLE,
    GROUP,
    COMPOSITE,
    LETTERS,
    /** Nothing or one number. */
    ANY_GROUP,
    /** Nothing, one number or several. */
    ANY;

    /** Whether data may write (1), which says nothing more than no group. */
    boolean takesOne() {
      return this == SINGLE || this == ANY_GROUP || this == ANY;
    }
  }

  /** Bounds of flashes a minute, the lower one closed, the upper one open but for ultra quick. */
  enum Rate {
    ANY(0, 300, true),
    SLOW(0, 50, false),
    QUICK(50, 80, false),
    VERY_QUICK(80, 160, false),
    ULTRA_QUICK(160, 300, true);

    private static final int MINUTE = 60_000;

    private final int least;
    private final int most;
    private final boolean closed;

    Rate(int least, int most, boolean closed) {
      this.least = least;
      this.most = most;
      this.closed = closed;
    }

    /** Whether this many flashes in this time are of this rate. */
    boolean holds(int flashes, int millis) {
      long scaled = (long) flashes * MINUTE;
      boolean under = closed ? scaled <= (long) most * millis : scaled < (long) most * millis;
      return under && scaled >= (long) least * millis;
    }

    int least() {
      return least;
    }

    /** The highest whole rate that is still allowed. */
    int most() {
      return closed ? most : most - 1;
    }

    static Rate of(int flashes, int millis) {
      for (Rate rate : new Rate[] {SLOW, QUICK, VERY_QUICK}) {
        if (rate.holds(flashes, millis)) {
          return rate;
        }
      }
      return ULTRA_QUICK;
    }
  }
}
