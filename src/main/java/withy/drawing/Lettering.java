package withy.drawing;

/**
 * The few letters and signs that a picture may hold besides digits, so that another language can
 * give its own.
 *
 * @param seconds the unit behind a number of seconds
 * @param decimalPoint between whole seconds and their parts
 */
public record Lettering(
    String north, String east, String south, String west, String seconds, char decimalPoint) {
  /** As English charts have them. */
  public static final Lettering ENGLISH = new Lettering("N", "E", "S", "W", "s", '.');

  /** A time in seconds, cut to hundredths, without its unit. */
  String seconds(double value) {
    return SvgWriter.number(value).replace('.', decimalPoint);
  }

  /** The compass letter of a whole bearing, or its three digits. */
  String bearing(int degrees) {
    int turned = Math.floorMod(degrees, 360);
    return switch (turned) {
      case 0 -> north;
      case 90 -> east;
      case 180 -> south;
      case 270 -> west;
      default -> (turned < 100 ? "0" : "") + (turned < 10 ? "0" : "") + turned;
    };
  }
}
