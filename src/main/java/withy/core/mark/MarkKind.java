package withy.core.mark;

import java.util.List;
import withy.core.Term;

/**
 * A kind of navigation mark: what scripts, files and statistics call it. The kinds of the Maritime
 * Buoyage System and those of national practice that are known here are constants; a practice may
 * describe marks of further kinds.
 *
 * @param id lower-case words joined by hyphens
 */
public record MarkKind(String id) implements Term {
  public static final MarkKind PORT_HAND = new MarkKind("port-hand");
  public static final MarkKind STARBOARD_HAND = new MarkKind("starboard-hand");
  public static final MarkKind PREFERRED_CHANNEL_TO_STARBOARD =
      new MarkKind("preferred-channel-to-starboard");
  public static final MarkKind PREFERRED_CHANNEL_TO_PORT =
      new MarkKind("preferred-channel-to-port");
  public static final MarkKind NORTH_CARDINAL = new MarkKind("north-cardinal");
  public static final MarkKind EAST_CARDINAL = new MarkKind("east-cardinal");
  public static final MarkKind SOUTH_CARDINAL = new MarkKind("south-cardinal");
  public static final MarkKind WEST_CARDINAL = new MarkKind("west-cardinal");
  public static final MarkKind ISOLATED_DANGER = new MarkKind("isolated-danger");
  public static final MarkKind SAFE_WATER = new MarkKind("safe-water");
  public static final MarkKind SPECIAL = new MarkKind("special");
  public static final MarkKind EMERGENCY_WRECK = new MarkKind("emergency-wreck");
  public static final MarkKind LEADING_FRONT = new MarkKind("leading-front");
  public static final MarkKind LEADING_REAR = new MarkKind("leading-rear");
  public static final MarkKind INFORMATION = new MarkKind("information");
  public static final MarkKind HAZARD = new MarkKind("hazard");
  public static final MarkKind CONTROL = new MarkKind("control");
  public static final MarkKind KEEP_OUT = new MarkKind("keep-out");
  public static final MarkKind MOORING = new MarkKind("mooring");
  public static final MarkKind ANCHORAGE = new MarkKind("anchorage");
  public static final MarkKind SWIMMING = new MarkKind("swimming");
  public static final MarkKind DIVING = new MarkKind("diving");
  public static final MarkKind CAUTIONARY = new MarkKind("cautionary");
  public static final MarkKind SCIENTIFIC = new MarkKind("scientific");
  public static final MarkKind INLAND_OBSTRUCTION = new MarkKind("inland-obstruction");
  public static final MarkKind CROSSING_BOARD = new MarkKind("crossing-board");

  private static final List<MarkKind> CARDINALS =
      List.of(NORTH_CARDINAL, EAST_CARDINAL, SOUTH_CARDINAL, WEST_CARDINAL);

  public MarkKind {
    if (!id.matches("[a-z]+(-[a-z]+)*")) {
      throw new IllegalArgumentException("'" + id + "' cannot be the name of a kind of mark");
    }
  }

  /** The cardinal mark of a quadrant. */
  public static MarkKind cardinal(Quadrant quadrant) {
    return CARDINALS.get(quadrant.ordinal());
  }

  public boolean isCardinal() {
    return CARDINALS.contains(this);
  }

  public boolean isLateral() {
    return equals(PORT_HAND) || equals(STARBOARD_HAND);
  }

  public boolean isPreferredChannel() {
    return equals(PREFERRED_CHANNEL_TO_STARBOARD) || equals(PREFERRED_CHANNEL_TO_PORT);
  }

  public boolean isLeading() {
    return equals(LEADING_FRONT) || equals(LEADING_REAR);
  }

  /**
   * The quadrant that a cardinal mark is named after.
   *
   * @throws IllegalStateException if the mark is not cardinal
   */
  public Quadrant quadrant() {
    if (!isCardinal()) {
      throw new IllegalStateException(id + " is no cardinal mark");
    }
    return Quadrant.values()[CARDINALS.indexOf(this)];
  }

  @Override
  public String name() {
    return id;
  }

  @Override
  public String toString() {
    return id;
  }
}
