package withy.drawing;

import static java.lang.Math.atan2;
import static java.lang.Math.cos;
import static java.lang.Math.exp;
import static java.lang.Math.hypot;
import static java.lang.Math.pow;
import static java.lang.Math.sin;
import static java.lang.Math.sqrt;
import static java.lang.Math.toDegrees;
import static java.lang.Math.toRadians;

/**
 * A screen colour as eyes see it: CIE 1931 chromaticity of sRGB (IEC 61966-2-1), contrast (WCAG
 * 2.2), difference (CIEDE2000 as in Sharma, Wu, Dalal 2005), and what is left of it for eyes
 * without one kind of cone (Machado, Oliveira, Fernandes 2009, severity 1.0).
 */
record Seen(double red, double green, double blue) {
  /** Machado et al. 2009, table of matrices, severity 1.0, on linear RGB. */
  enum Eyes {
    NORMAL(1, 0, 0, 0, 1, 0, 0, 0, 1),
    PROTANOPIA(
        0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116,
        1.051998),
    DEUTERANOPIA(
        0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
    TRITANOPIA(
        1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367,
        0.303900);

    private final double[] m;

    Eyes(double... m) {
      this.m = m;
    }

    /** The matrix as an SVG colour filter takes it, opacity untouched. */
    String matrix() {
      StringBuilder rows = new StringBuilder();
      for (int i = 0; i < 3; i++) {
        rows.append(m[3 * i] + " " + m[3 * i + 1] + " " + m[3 * i + 2] + " 0 0 ");
      }
      return rows + "0 0 0 1 0";
    }

    Seen see(Seen c) {
      return new Seen(row(0, c), row(1, c), row(2, c));
    }

    private double row(int i, Seen c) {
      double value = m[3 * i] * c.red + m[3 * i + 1] * c.green + m[3 * i + 2] * c.blue;
      return Math.max(0, Math.min(1, value));
    }
  }

  static Seen of(Palette colour) {
    int rgb = Integer.parseInt(colour.toString().substring(1), 16);
    return new Seen(linear(rgb >> 16), linear(rgb >> 8 & 255), linear(rgb & 255));
  }

  private static double linear(int value) {
    double v = value / 255.0;
    return v <= 0.04045 ? v / 12.92 : pow((v + 0.055) / 1.055, 2.4);
  }

  /** CIE X, Y, Z with Y of white 1. */
  private double[] xyz() {
    return new double[] {
      0.4124 * red + 0.3576 * green + 0.1805 * blue,
      luminance(),
      0.0193 * red + 0.1192 * green + 0.9505 * blue
    };
  }

  double luminance() {
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  }

  /** CIE 1931 chromaticity. */
  double x() {
    return xyz()[0] / (xyz()[0] + xyz()[1] + xyz()[2]);
  }

  double y() {
    return xyz()[1] / (xyz()[0] + xyz()[1] + xyz()[2]);
  }

  double contrast(Seen other) {
    double lighter = Math.max(luminance(), other.luminance());
    double darker = Math.min(luminance(), other.luminance());
    return (lighter + 0.05) / (darker + 0.05);
  }

  double difference(Seen other) {
    return difference(lab(), other.lab());
  }

  double[] lab() {
    double[] xyz = xyz();
    double fx = f(xyz[0] / 0.9505);
    double fy = f(xyz[1]);
    double fz = f(xyz[2] / 1.089);
    return new double[] {116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)};
  }

  private static double f(double t) {
    return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
  }

  /** CIEDE2000 of two CIELAB colours. */
  static double difference(double[] one, double[] two) {
    double mean = (hypot(one[1], one[2]) + hypot(two[1], two[2])) / 2;
    double g = 0.5 * (1 - sqrt(pow(mean, 7) / (pow(mean, 7) + pow(25, 7))));
    double c1 = hypot(one[1] * (1 + g), one[2]);
    double c2 = hypot(two[1] * (1 + g), two[2]);
    double h1 = hue(one[1] * (1 + g), one[2]);
    double h2 = hue(two[1] * (1 + g), two[2]);
    double turn = c1 * c2 == 0 ? 0 : turn(h2 - h1);
    double dh = 2 * sqrt(c1 * c2) * sin(toRadians(turn / 2));
    double hm = c1 * c2 == 0 ? h1 + h2 : meanHue(h1, h2);
    double lm = (one[0] + two[0]) / 2;
    double cm = (c1 + c2) / 2;
    double t =
        1
            - 0.17 * cos(toRadians(hm - 30))
            + 0.24 * cos(toRadians(2 * hm))
            + 0.32 * cos(toRadians(3 * hm + 6))
            - 0.20 * cos(toRadians(4 * hm - 63));
    double sl = 1 + 0.015 * pow(lm - 50, 2) / sqrt(20 + pow(lm - 50, 2));
    double dl = (two[0] - one[0]) / sl;
    double dc = (c2 - c1) / (1 + 0.045 * cm);
    double dhs = dh / (1 + 0.015 * cm * t);
    double rotation =
        -sin(toRadians(60 * exp(-pow((hm - 275) / 25, 2))))
            * 2
            * sqrt(pow(cm, 7) / (pow(cm, 7) + pow(25, 7)));
    return sqrt(dl * dl + dc * dc + dhs * dhs + rotation * dc * dhs);
  }

  private static double hue(double a, double b) {
    double degrees = toDegrees(atan2(b, a));
    return degrees < 0 ? degrees + 360 : degrees;
  }

  private static double turn(double degrees) {
    return degrees > 180 ? degrees - 360 : degrees < -180 ? degrees + 360 : degrees;
  }

  private static double meanHue(double h1, double h2) {
    double sum = h1 + h2;
    return Math.abs(h1 - h2) <= 180 ? sum / 2 : sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
  }
}
