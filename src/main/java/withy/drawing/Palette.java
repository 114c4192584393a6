package withy.drawing;

import withy.core.light.LightColour;
import withy.core.mark.Colour;

/**
 * The only colours of the pictures. Those of surfaces lie in the regions for ordinary surface
 * colours of CIE 39.2 as far as a screen can show them; the interface keeps to ink and paper.
 */
enum Palette {
  PAPER("#f6f2e9"),
  INK("#1a1a1a"),
  SECOND_INK("#4a4f55"),
  HAIRLINE("#c9c2b2"),
  ACCENT("#2f4858"),

  RED("#d0021b"),
  GREEN("#00a651"),
  YELLOW("#ffd100"),
  BLACK("#1a1a1a"),
  WHITE("#ffffff"),
  BLUE("#0057b8"),
  ORANGE("#f47b20"),
  GREY("#8b9197"),

  RED_LIGHT("#ff2a1a"),
  GREEN_LIGHT("#00b878"),
  YELLOW_LIGHT("#ffb000"),
  WHITE_LIGHT("#fff8e7"),
  BLUE_LIGHT("#3d7bff"),
  ORANGE_LIGHT("#ff8a1f"),
  VIOLET_LIGHT("#b07bff"),
  AMBER_LIGHT("#ffb000"),

  SKY("#e9efee"),
  SEA("#c6d7db"),
  FAR_SEA("#d3e0e2"),
  FAR_LAND("#d5dedd"),
  RIPPLE("#7d99a5"),
  DEEP("#48636f"),
  SILHOUETTE("#34434f"),
  LANTERN("#efe9d8"),
  HILL("#c3cfbf"),
  NEAR_HILL("#aebfa8"),
  NIGHT_LAND("#060b12"),
  ROCK("#8a8378"),
  ROCK_SHADE("#6c665d"),
  MUD("#a3947d"),
  TIMBER("#7a6753"),
  STEEL("#5d6670"),
  TWIG("#5e4a36"),
  LAND("#e6d9b8"),
  CHART_WATER("#eaf0ef"),
  SHOAL("#dfe8e2"),

  CHART_DEEP("#fdfcf8"),
  CHART_SHELVING("#e3ecee"),
  CHART_SHALLOW("#c9d9e0"),
  CHART_DRYING("#c6cbb4"),
  CHART_LINE("#6f8b99"),
  CHART_PLUM("#8a4f7d"),

  NIGHT("#0a121c"),
  NIGHT_SEA("#0d1723"),
  ECLIPSE("#000000"),
  NIGHT_HORIZON("#1b2a3a"),
  NIGHT_INK("#9fb0bd"),
  NIGHT_SHELVING("#101e2b"),
  NIGHT_SHALLOW("#16293a"),
  NIGHT_DRYING("#1d2a2c"),
  NIGHT_SHORE("#2a2720"),
  NIGHT_LINE("#3f5666"),
  NIGHT_FAINT("#7a8c9a");

  private final String hex;

  Palette(String hex) {
    this.hex = hex;
  }

  /** The colour as an attribute holds it. */
  @Override
  public String toString() {
    return hex;
  }

  /** The surface colour of a mark. */
  static Palette of(Colour colour) {
    return valueOf(colour.name());
  }

  /** The colour of a light, as near as a screen comes to it. */
  static Palette of(LightColour colour) {
    return valueOf(colour.name() + "_LIGHT");
  }

  /** The colour of numbers and letters on a body. */
  static Palette lettering(Colour ground) {
    return switch (ground) {
      case RED, GREEN, BLACK, BLUE -> WHITE;
      case YELLOW, WHITE, ORANGE, GREY -> BLACK;
    };
  }
}
