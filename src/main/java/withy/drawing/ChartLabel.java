package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;
import withy.core.waterway.PlacedMark;

/**
 * What stands beside a mark: its number and the letters of its colours from the top down, below
 * them its light character; sloping beside what floats, upright beside what stands on the ground.
 *
 * @param number null where it bears none
 * @param light null where it is unlit
 */
record ChartLabel(
    @Nullable String number, String colours, @Nullable String light, boolean sloping) {
  static final double SIZE = 11;
  static final double LINE = 11.5;
  private static final double SPACE = 4;
  private static final double[] AWAY = {1.5, 6, 12, 20, 30, 42, 56, 72};

  static ChartLabel of(PlacedMark mark) {
    Appearance seen = mark.appearance();
    boolean fixed = seen.body() == BodyShape.BEACON || seen.body() == BodyShape.DAYBOARD;
    LightCharacter light = seen.light();
    return new ChartLabel(
        mark.label(),
        letters(seen.colours()),
        light == null ? null : light.shortNotation(),
        !fixed);
  }

  /** The colours as charts abbreviate them; stripes that come again are named once. */
  private static String letters(List<Colour> colours) {
    StringBuilder letters = new StringBuilder();
    boolean alternate = colours.size() > 3;
    for (Colour each : alternate ? colours.subList(0, 2) : colours) {
      letters.append(letter(each));
    }
    return letters.toString();
  }

  private static String letter(Colour colour) {
    return switch (colour) {
      case RED -> "R";
      case GREEN -> "G";
      case YELLOW -> "Y";
      case BLACK -> "B";
      case WHITE -> "W";
      case BLUE -> "Bu";
      case ORANGE -> "Or";
      case GREY -> "Gy";
    };
  }

  private double numberWidth() {
    return number == null ? 0 : Type.width(number, SIZE, true) + SPACE;
  }

  private double width() {
    double first = numberWidth() + Type.width(colours, SIZE, false);
    return Math.max(first, light == null ? 0 : Type.width(light, SIZE, false));
  }

  private double height() {
    return light == null ? LINE : 2 * LINE;
  }

  /** Boxes beside a sign in which it could stand, the best ones first. */
  List<Box> places(Box sign) {
    return places(sign, width(), height());
  }

  static List<Box> places(Box sign, double width, double height) {
    List<Box> places = new ArrayList<>();
    Vec middle = sign.middle();
    for (double away : AWAY) {
      double right = sign.right() + away + width / 2;
      double left = sign.left() - away - width / 2;
      double above = sign.top() - away - height / 2;
      double below = sign.bottom() + away + height / 2;
      for (double slide : new double[] {0, -8, 8}) {
        places.add(Box.around(new Vec(right, middle.y() + slide), width, height));
        places.add(Box.around(new Vec(left, middle.y() + slide), width, height));
      }
      for (double slide : new double[] {0, width / 3, -width / 3}) {
        places.add(Box.around(new Vec(middle.x() + slide, below), width, height));
        places.add(Box.around(new Vec(middle.x() + slide, above), width, height));
      }
      places.add(Box.around(new Vec(right, above), width, height));
      places.add(Box.around(new Vec(left, above), width, height));
      places.add(Box.around(new Vec(right, below), width, height));
      places.add(Box.around(new Vec(left, below), width, height));
    }
    return places;
  }

  /** Writes it into a box, towards the side on which its sign lies. */
  void draw(SvgWriter svg, Box box, Vec sign) {
    double first = numberWidth() + Type.width(colours, SIZE, false);
    double second = light == null ? 0 : Type.width(light, SIZE, false);
    double base = box.top() + SIZE * 0.85;
    double left = left(box, sign, first);
    if (number != null) {
      ChartWords.write(svg, number, left, base, "font-weight", 700);
    }
    ChartWords.write(svg, colours, left + numberWidth(), base, style());
    if (light != null) {
      ChartWords.write(svg, light, left(box, sign, second), base + LINE, style());
    }
  }

  private Object[] style() {
    return sloping ? new Object[] {"font-style", "italic"} : new Object[0];
  }

  private static double left(Box box, Vec sign, double width) {
    if (box.left() > sign.x()) {
      return box.left();
    }
    return box.right() < sign.x() ? box.right() - width : box.middle().x() - width / 2;
  }
}
