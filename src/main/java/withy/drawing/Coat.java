package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;

/**
 * How the colours of a body share its surface: bands of equal height from the top to the waterline
 * (the lowest goes on below it), or stripes of equal width from edge to edge.
 */
record Coat(ColourPattern pattern, List<Colour> colours) {
  /** A patch of one colour: shares of the half-width, and heights. */
  private record Patch(Colour colour, double left, double right, double top, double bottom) {}

  static Coat of(Appearance appearance) {
    List<Colour> colours = appearance.colours();
    return appearance.pattern() == ColourPattern.VERTICAL
        ? new Coat(ColourPattern.VERTICAL, stripes(appearance.body(), colours))
        : new Coat(appearance.pattern(), colours);
  }

  /**
   * Whole stripes: where two colours only name the order, red and white show five stripes with the
   * first colour at both edges, blue and yellow the even number that an emergency wreck mark asks
   * for (IMO SN.1/Circ.259: four to eight, as many of one as of the other).
   */
  private static List<Colour> stripes(BodyShape body, List<Colour> named) {
    if (named.size() != 2) {
      return named;
    }
    int count = named.contains(Colour.BLUE) ? 4 : body == BodyShape.SPAR ? 3 : 5;
    List<Colour> stripes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      stripes.add(named.get(i % 2));
    }
    return stripes;
  }

  void paint(SvgWriter svg, Surface surface) {
    for (Patch each : patches(surface.profile())) {
      svg.element(
          "path",
          "d",
          surface.patch(each.left, each.right, each.top, each.bottom),
          "fill",
          Palette.of(each.colour));
    }
    if (pattern == ColourPattern.HORIZONTAL) {
      separateRedFromBlack(svg, surface);
    }
  }

  private List<Patch> patches(Profile profile) {
    double top = profile.top();
    double bottom = profile.bottom();
    List<Patch> patches = new ArrayList<>();
    int n = colours.size();
    for (int i = 0; i < n; i++) {
      Colour colour = colours.get(i);
      double share = 2.0 / n;
      switch (pattern) {
        case PLAIN -> patches.add(new Patch(colour, -1, 1, top, bottom));
        case HORIZONTAL ->
            patches.add(
                new Patch(
                    colour, -1, 1, edge(profile, i), i == n - 1 ? bottom : edge(profile, i + 1)));
        case VERTICAL ->
            patches.add(new Patch(colour, share * i - 1, share * (i + 1) - 1, top, bottom));
        case BORDER, DIAGONAL, SQUARED ->
            patches.add(new Patch(colour, -1 + 0.3 * i, 1 - 0.3 * i, top, bottom));
      }
    }
    return patches;
  }

  /** The height of the upper edge of a band. */
  private double edge(Profile profile, int band) {
    return profile.top() * (1 - (double) band / colours.size());
  }

  /** Red beside black is lost on many colour-blind eyes: a thin light line parts them. */
  private void separateRedFromBlack(SvgWriter svg, Surface surface) {
    for (int i = 1; i < colours.size(); i++) {
      List<Colour> pair = List.of(colours.get(i - 1), colours.get(i));
      if (pair.contains(Colour.RED) && pair.contains(Colour.BLACK)) {
        svg.element(
            "path",
            "d",
            surface.ring(edge(surface.profile(), i)),
            "fill",
            "none",
            "stroke",
            Palette.WHITE,
            "stroke-width",
            1.3);
      }
    }
  }

  /** The height of the middle of the letters: that of the form, or of the band that it falls in. */
  double letterHeight(BodyForm form) {
    if (pattern != ColourPattern.HORIZONTAL) {
      return form.letters();
    }
    int band = bandAt(form.letters(), form);
    return (edge(form.profile(), band) + edge(form.profile(), band + 1)) / 2;
  }

  double letterSize(BodyForm form) {
    double band = -form.top() / colours.size();
    return pattern == ColourPattern.HORIZONTAL
        ? Math.min(form.letterSize(), band * 0.8)
        : form.letterSize();
  }

  /** The colour under the letters. */
  Colour groundAt(double y, BodyForm form) {
    return switch (pattern) {
      case HORIZONTAL -> colours.get(bandAt(y, form));
      case VERTICAL -> colours.get(colours.size() / 2);
      case PLAIN, BORDER, DIAGONAL, SQUARED -> colours.get(colours.size() - 1);
    };
  }

  private int bandAt(double y, BodyForm form) {
    int band = (int) Math.floor((1 - y / form.top()) * colours.size());
    return Math.max(0, Math.min(colours.size() - 1, band));
  }
}
