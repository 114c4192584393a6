package withy.core.light;

/** A colour of light that a navigation mark may show (IHO Chart 1, section P 11). */
public enum LightColour {
  WHITE("white", "W"),
  RED("red", "R"),
  GREEN("green", "G"),
  YELLOW("yellow", "Y"),
  BLUE("blue", "Bu"),
  ORANGE("orange", "Or"),
  VIOLET("violet", "Vi"),
  AMBER("amber", "Am");

  private final String id;
  private final String abbreviation;

  LightColour(String id, String abbreviation) {
    this.id = id;
    this.abbreviation = abbreviation;
  }

  /** The colour's lower-case English word, as data carries it. */
  public String id() {
    return id;
  }

  /** The colour as charts abbreviate it. */
  public String abbreviation() {
    return abbreviation;
  }
}
