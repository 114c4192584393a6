package withy.drawing;

import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.Colour;
import withy.core.mark.Symbol;

/**
 * The symbol of a round body and what goes with it: two orange bands, one near the top and one just
 * above the waterline (33 CFR 62.33), the flag of a diving buoy, the Intracoastal band.
 */
record Emblem(Appearance appearance, Surface surface) {
  private static final double STAFF = 48;
  private static final double FLAG = 33;

  private @Nullable Symbol symbol() {
    return appearance.symbol();
  }

  private boolean orange() {
    return symbol() != null && symbol().isOrange();
  }

  private boolean intracoastal() {
    return symbol() != null && symbol().isIntracoastal();
  }

  private double top() {
    return surface.profile().top();
  }

  /** The highest place of body, ring and flag. */
  double highest(boolean mooring) {
    double ring = mooring ? MooringRing.HEIGHT : 0;
    return top() - (symbol() == Symbol.DIVER_FLAG ? STAFF + 2 : ring);
  }

  /** Bands that go round the body. */
  void bands(SvgWriter svg) {
    if (orange()) {
      band(svg, upperBand(), Colour.ORANGE);
      band(svg, lowerBand(), Colour.ORANGE);
    } else if (symbol() == Symbol.YELLOW_BAND) {
      band(svg, signHeight() + thickness() / 2, Colour.YELLOW);
    }
  }

  private void band(SvgWriter svg, double bottom, Colour colour) {
    PathData patch = surface.patch(-1, 1, bottom - thickness(), bottom);
    if (colour == Colour.YELLOW) {
      Pen.area(svg, patch, Palette.YELLOW, Palette.INK, 0.9);
    } else {
      svg.element("path", "d", patch, "fill", Palette.of(colour));
    }
  }

  double thickness() {
    return Math.max(5, Math.min(9, -top() * 0.08));
  }

  /** The lower edge of the band near the top. */
  double upperBand() {
    return top() * 0.95 + thickness() + 1;
  }

  /** The lower edge of the band above the waterline. */
  double lowerBand() {
    return Math.min(-3.5, top() * 0.05);
  }

  void draw(SvgWriter svg, boolean labelled) {
    Symbol shown = symbol();
    if (shown == null) {
      return;
    }
    if (shown == Symbol.DIVER_FLAG) {
      flag(svg, false);
    } else if (intracoastal()) {
      double size = Math.min(-top() * 0.3, Math.min(15, half(signHeight()) * 1.3));
      SymbolDrawing.draw(svg, shown, new Vec(0, signHeight()), size, size);
    } else {
      large(svg, shown, labelled);
    }
  }

  /** As large as the body between the bands lets it be. */
  private void large(SvgWriter svg, Symbol shown, boolean labelled) {
    double from = upperBand() + 4;
    double to = Math.min(symbolFloor(), labelled ? letters(0) - 9 : 0);
    double middle = (from + to) / 2;
    double height = Math.min(to - from, 58);
    double room = Math.min(half(middle - height / 4), half(middle + height / 4));
    double width = Math.min(2 * room * 0.9, height);
    SymbolDrawing.draw(svg, shown, new Vec(0, middle), width, Math.min(height, width * 1.4));
  }

  /** The lowest place of a large symbol: above the hull of a pillar, else above the lower band. */
  private double symbolFloor() {
    return Math.min(lowerBand() - thickness() - 4, top() < -140 ? -30 : 0);
  }

  private double half(double y) {
    return surface.profile().halfWidth(y);
  }

  /** Small signs stand above the number, where the body is wide enough. */
  private double signHeight() {
    return top() * (half(top() * 0.78) < 12 && top() > -100 ? 0.56 : 0.76);
  }

  private boolean lowSign() {
    return intracoastal() && top() > -60;
  }

  /** Where letters stand that would stand at a height without the symbol. */
  double letters(double usual) {
    double beside = lowSign() ? top() * 0.3 : usual;
    return orange() || symbol() == Symbol.ANCHOR ? lowerBand() - thickness() - 9 : beside;
  }

  double letterSize(double usual) {
    return orange() || symbol() == Symbol.ANCHOR
        ? Math.min(12, usual)
        : intracoastal() ? Math.min(usual * 0.85, -top() * 0.36) : usual;
  }

  /** What shows of the symbol from afar. */
  void silhouette(SvgWriter svg) {
    if (symbol() == Symbol.DIVER_FLAG) {
      flag(svg, true);
    }
  }

  /** A square red flag with a white stripe from the head of its staff down to the fly. */
  private void flag(SvgWriter svg, boolean dark) {
    double x = appearance.light() == null && appearance.topmark() == null ? 0 : -8;
    double head = top() - STAFF;
    Palette ink = dark ? Palette.SILHOUETTE : Palette.INK;
    Pen.band(svg, PathData.line(x, top() + 4, x, head), ink, 2.6);
    PathData cloth =
        PathData.at(x, head)
            .quadratic(x + FLAG * 0.3, head - 3, x + FLAG * 0.5, head + 0.5)
            .quadratic(x + FLAG * 0.76, head + 4, x + FLAG, head + 1)
            .line(x + FLAG, head + FLAG + 1)
            .quadratic(x + FLAG * 0.76, head + FLAG + 4, x + FLAG * 0.5, head + FLAG + 0.5)
            .quadratic(x + FLAG * 0.3, head + FLAG - 3, x, head + FLAG)
            .close();
    svg.element("path", "d", cloth, "fill", dark ? ink : Palette.RED);
    if (!dark) {
      svg.element("path", "d", diagonal(x, head), "fill", Palette.WHITE);
      Pen.line(svg, cloth, Palette.INK, 1.6);
    }
  }

  private static PathData diagonal(double x, double head) {
    double w = 7.5;
    double foot = head + FLAG;
    return PathData.polygon(
        x,
        head,
        x + w,
        head - 1.2,
        x + FLAG,
        foot - w + 1,
        x + FLAG,
        foot + 1,
        x + FLAG - w,
        foot + 2.4,
        x,
        head + w);
  }
}
