package withy.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import withy.core.mark.Appearance;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;

/**
 * How the colours of a body share its surface: bands from the top to the waterline (the lowest goes
 * on below it), or stripes from edge to edge.
 *
 * @param weights the share of each colour; equal but on mooring buoys with an orange top and on
 *     obstruction marks
 */
record Coat(ColourPattern pattern, List<Colour> colours, List<Integer> weights) {
  private static final List<Colour> ORANGE_TOP = List.of(Colour.ORANGE, Colour.WHITE);
  private static final List<Colour> BLUE_BAND = List.of(Colour.WHITE, Colour.BLUE, Colour.WHITE);

  /** A patch of one colour: shares of the half-width, and heights. */
  private record Patch(Colour colour, double left, double right, double top, double bottom) {}

  static Coat of(Appearance appearance) {
    List<Colour> colours = appearance.colours();
    if (appearance.pattern() == ColourPattern.VERTICAL) {
      List<Colour> stripes = Stripes.of(appearance.body(), colours);
      return new Coat(ColourPattern.VERTICAL, stripes, Stripes.weights(stripes));
    }
    return new Coat(appearance.pattern(), colours, bandWeights(colours));
  }

  /** Orange is the top third of a Canadian mooring buoy. */
  private static List<Integer> bandWeights(List<Colour> bands) {
    return bands.equals(ORANGE_TOP) ? List.of(1, 2) : bands.stream().map(each -> 1).toList();
  }

  /** Whether the bands are those of a mooring buoy, which has a ring to lie to. */
  boolean isMooring() {
    return pattern == ColourPattern.HORIZONTAL
        && (colours.equals(ORANGE_TOP) || colours.equals(BLUE_BAND));
  }

  /** Paints what lies between two heights. */
  void paint(SvgWriter svg, Surface surface, double from, double to) {
    if (pattern == ColourPattern.DIAGONAL || pattern == ColourPattern.SQUARED) {
      fields(svg, surface, from, to);
    }
    for (Patch each : patches(surface.profile())) {
      double top = Math.max(each.top, from);
      double bottom = Math.min(each.bottom, to);
      if (bottom - top > 0.05) {
        PathData path = surface.patch(each.left, each.right, top, bottom);
        svg.element("path", "d", path, "fill", Palette.of(each.colour));
      }
    }
    if (pattern == ColourPattern.HORIZONTAL) {
      part(svg, surface, from, to);
    }
  }

  /** What each colour has of some slats cut level from the surface, given by top and bottom. */
  Map<Colour, PathData> slats(Surface surface, List<double[]> slats) {
    Map<Colour, PathData> paths = new LinkedHashMap<>();
    for (Patch each : patches(surface.profile())) {
      for (double[] slat : slats) {
        double middle = (slat[0] + slat[1]) / 2;
        if (middle >= each.top && middle < each.bottom) {
          PathData path = surface.patch(each.left, each.right, slat[0], slat[1]);
          paths.computeIfAbsent(each.colour, colour -> new PathData()).append(path);
        }
      }
    }
    return paths;
  }

  /** Patterns that are cut from the flat and then wrapped round the body. */
  private void fields(SvgWriter svg, Surface surface, double from, double to) {
    double half = surface.profile().halfWidth((from + to) / 2);
    Polygon flat = Polygon.box(-half, from, half, to);
    for (ColourFields.Field each : ColourFields.of(flat, pattern, colours, false)) {
      PathData path = each.shape().path(at -> surface.seen(at.x() / half, at.y()));
      svg.element("path", "d", path, "fill", Palette.of(each.colour()));
    }
  }

  private List<Patch> patches(Profile profile) {
    double top = profile.top();
    double bottom = profile.bottom();
    List<Patch> patches = new ArrayList<>();
    int n = colours.size();
    for (int i = 0; i < n; i++) {
      Colour colour = colours.get(i);
      switch (pattern) {
        case PLAIN -> patches.add(new Patch(colour, -1, 1, top, bottom));
        case HORIZONTAL -> {
          double end = i == n - 1 ? bottom : edge(profile, i + 1);
          patches.add(new Patch(colour, -1, 1, edge(profile, i), end));
        }
        case VERTICAL ->
            patches.add(new Patch(colour, 2 * share(i) - 1, 2 * share(i + 1) - 1, top, bottom));
        case BORDER -> patches.add(new Patch(colour, -1 + 0.3 * i, 1 - 0.3 * i, top, bottom));
        case DIAGONAL, SQUARED -> {}
      }
    }
    return patches;
  }

  /** The share of the whole before a colour begins. */
  double share(int number) {
    int before = 0;
    int all = 0;
    for (int i = 0; i < weights.size(); i++) {
      before += i < number ? weights.get(i) : 0;
      all += weights.get(i);
    }
    return (double) before / all;
  }

  /** The height of the upper edge of a band. */
  private double edge(Profile profile, int band) {
    return profile.top() * (1 - share(band));
  }

  /** Whether two colours side by side are lost on many colour-blind eyes. */
  static boolean alike(Colour one, Colour other) {
    List<Colour> pair = List.of(one, other);
    return one != other
        && pair.contains(Colour.RED)
        && (pair.contains(Colour.BLACK) || pair.contains(Colour.GREEN));
  }

  /** A thin light line parts red from the black or green beside it. */
  private void part(SvgWriter svg, Surface surface, double from, double to) {
    for (int i = 1; i < colours.size(); i++) {
      double y = edge(surface.profile(), i);
      if (alike(colours.get(i - 1), colours.get(i)) && y > from && y < to) {
        Pen.band(svg, surface.ring(y), Palette.WHITE, 1.3);
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
    int band = 0;
    while (band < colours.size() - 1 && 1 - y / form.top() >= share(band + 1)) {
      band++;
    }
    return band;
  }
}
