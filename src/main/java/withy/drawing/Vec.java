package withy.drawing;

import withy.core.geometry.Bearing;

/** A place in a picture, x to the right and y down, or the way from one place to another. */
record Vec(double x, double y) {
  static final Vec RIGHT = new Vec(1, 0);
  static final Vec DOWN = new Vec(0, 1);

  /** The way along a bearing, north being up. */
  static Vec along(Bearing bearing, double length) {
    double angle = StrictMath.toRadians(bearing.degrees());
    return new Vec(length * StrictMath.sin(angle), -length * StrictMath.cos(angle));
  }

  Vec plus(Vec other) {
    return new Vec(x + other.x, y + other.y);
  }

  Vec minus(Vec other) {
    return new Vec(x - other.x, y - other.y);
  }

  Vec times(double factor) {
    return new Vec(x * factor, y * factor);
  }

  double dot(Vec other) {
    return x * other.x + y * other.y;
  }

  double length() {
    return StrictMath.hypot(x, y);
  }

  /** A transform that takes a drawing made pointing up to this place, turned to a bearing. */
  String turned(Bearing bearing) {
    return "translate("
        + SvgWriter.number(x)
        + " "
        + SvgWriter.number(y)
        + ") rotate("
        + SvgWriter.number(bearing.degrees())
        + ")";
  }
}
