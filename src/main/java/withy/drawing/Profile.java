package withy.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * The half-outline of a body of revolution: half its width from the top down to below the water,
 * through straight and curved pieces whose heights never rise.
 */
final class Profile {
  /** A cubic curve of half-widths w and heights y. */
  record Piece(double[] w, double[] y, boolean straight) {
    double widthAt(double t) {
      return at(w, t);
    }

    double heightAt(double t) {
      return at(y, t);
    }

    private static double at(double[] p, double t) {
      double s = 1 - t;
      return s * s * s * p[0] + 3 * s * s * t * p[1] + 3 * s * t * t * p[2] + t * t * t * p[3];
    }

    /** Where the piece passes a height, by halving. */
    private double timeOf(double height) {
      double low = 0;
      double high = 1;
      for (int i = 0; i < 40; i++) {
        double middle = (low + high) / 2;
        if (heightAt(middle) < height) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return (low + high) / 2;
    }

    /** The part of the piece between two heights. */
    private Piece between(double top, double bottom) {
      double from = y[0] >= top ? 0 : timeOf(top);
      double to = y[3] <= bottom ? 1 : timeOf(bottom);
      return new Piece(cut(w, from, to), cut(y, from, to), straight);
    }

    /** The control values of a part of a cubic, by its polar form. */
    private static double[] cut(double[] p, double a, double b) {
      return new double[] {
        polar(p, a, a, a), polar(p, a, a, b), polar(p, a, b, b), polar(p, b, b, b)
      };
    }

    private static double polar(double[] p, double r, double s, double t) {
      double a = mix(mix(p[0], p[1], r), mix(p[1], p[2], r), s);
      double b = mix(mix(p[1], p[2], r), mix(p[2], p[3], r), s);
      return mix(a, b, t);
    }

    private static double mix(double a, double b, double t) {
      return a + (b - a) * t;
    }
  }

  private final List<Piece> pieces = new ArrayList<>();
  private double lastWidth;
  private double lastHeight;

  private Profile(double halfWidth, double y) {
    lastWidth = halfWidth;
    lastHeight = y;
  }

  static Profile from(double halfWidth, double y) {
    return new Profile(halfWidth, y);
  }

  Profile line(double halfWidth, double y) {
    double third = (halfWidth - lastWidth) / 3;
    double rise = (y - lastHeight) / 3;
    return add(
        new double[] {lastWidth, lastWidth + third, halfWidth - third, halfWidth},
        new double[] {lastHeight, lastHeight + rise, y - rise, y},
        true);
  }

  Profile curve(double aw, double ay, double bw, double by, double halfWidth, double y) {
    return add(
        new double[] {lastWidth, aw, bw, halfWidth}, new double[] {lastHeight, ay, by, y}, false);
  }

  private Profile add(double[] w, double[] y, boolean straight) {
    pieces.add(new Piece(w, y, straight));
    lastWidth = w[3];
    lastHeight = y[3];
    return this;
  }

  double top() {
    return pieces.get(0).y()[0];
  }

  double bottom() {
    return lastHeight;
  }

  double halfWidth(double height) {
    for (Piece each : pieces) {
      if (height <= each.y()[3]) {
        return each.widthAt(each.timeOf(height));
      }
    }
    return lastWidth;
  }

  /** The pieces between two heights, from the top down. */
  List<Piece> between(double top, double bottom) {
    List<Piece> inside = new ArrayList<>();
    for (Piece each : pieces) {
      boolean level = each.y()[3] - each.y()[0] < 1e-9;
      boolean within = level ? each.y()[0] > top && each.y()[0] < bottom : false;
      if (within || (!level && each.y()[3] > top + 1e-9 && each.y()[0] < bottom - 1e-9)) {
        inside.add(level ? each : each.between(top, bottom));
      }
    }
    return inside;
  }
}
