package withy.drawing;

/**
 * The few letters and signs that a picture may hold besides digits, so that another language can
 * give its own.
 *
 * @param seconds the unit behind a number of seconds
 * @param decimalPoint between whole seconds and their parts
 * @param metres the unit behind a number of metres
 * @param cable the unit behind one tenth of a nautical mile
 * @param cables the unit behind a number of tenths of a nautical mile
 * @param bar what stands beside a sill across the mouth of a river
 */
public record Lettering(
    String north,
    String east,
    String south,
    String west,
    String seconds,
    char decimalPoint,
    String metres,
    String cable,
    String cables,
    String bar) {
  /** As English charts have them. */
  public static final Lettering ENGLISH =
      new Lettering("N", "E", "S", "W", "s", '.', "m", "cable", "cables", "Bar");

  /** A time in seconds, cut to hundredths, without its unit. */
  String seconds(double value) {
    return SvgWriter.number(value).replace('.', decimalPoint);
  }

  /** Metres to a tenth, with their unit. */
  String metres(double value) {
    String figures = SvgWriter.decimal(value, 10).replace('.', decimalPoint);
    return figures + "\u00a0" + metres;
  }

  /** Three figures, as bearings are written. */
  static String figures(int degrees) {
    return (degrees < 100 ? "0" : "") + (degrees < 10 ? "0" : "") + degrees;
  }

  /** The compass letter of a whole bearing, or its three digits. */
  String bearing(int degrees) {
    int turned = Math.floorMod(degrees, 360);
    return switch (turned) {
      case 0 -> north;
      case 90 -> east;
      case 180 -> south;
      case 270 -> west;
      default -> figures(turned);
    };
  }
}
