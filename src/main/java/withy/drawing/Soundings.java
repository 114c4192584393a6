package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.waterway.Fairway;
import withy.core.waterway.Waterway;

/**
 * Which soundings a chart shows: along the fairways first, then over all the rest, as evenly as
 * there is room beside signs, words and lines.
 */
final class Soundings {
  static final double SIZE = 10.5;

  private static final double ACROSS = 26;
  private static final double DOWN = 21;
  private static final double ALONG = 40;

  /** Clear room round each: more in deep water, where little depends on it. */
  private static final double CLEAR = 8;

  private static final double CLEAR_IN_DEEP = 15;
  private static final double DEEP = 7;

  private static final double[] STEPS = {0, 4, 8, 11};

  /** A sounding and its middle, where the water is as deep. */
  record Sounding(SoundingText text, Vec at) {
    Box box() {
      return text.box(at, SIZE);
    }
  }

  private final ChartSheet sheet;
  private final ChartRoom room;
  private final List<Sounding> shown = new ArrayList<>();

  private Soundings(ChartSheet sheet, ChartRoom room) {
    this.sheet = sheet;
    this.room = room;
  }

  static List<Sounding> of(Waterway water, ChartSheet sheet, ChartRoom room) {
    Soundings soundings = new Soundings(sheet, room);
    water.fairways().forEach(soundings::along);
    soundings.over();
    return soundings.shown;
  }

  private void along(Fairway fairway) {
    double step = ALONG / sheet.scale();
    for (double along = step / 2; along < fairway.line().length(); along += step) {
      Vec at = sheet.at(fairway.line().at(along));
      if (!tried(at, 3, true)) {
        tried(at, 2, false);
      }
    }
  }

  private void over() {
    Box area = sheet.area();
    int row = 0;
    for (double y = area.top() + DOWN / 2; y < area.bottom(); y += DOWN) {
      for (double x = area.left() + (row % 2 == 0 ? 14 : 14 + ACROSS / 2);
          x < area.right();
          x += ACROSS) {
        tried(new Vec(x, y).plus(aside(row, (int) x)), STEPS.length, true);
      }
      row++;
    }
  }

  /** A little off the row, now here, now there, so that no pattern draws the eye. */
  private static Vec aside(int row, int x) {
    int mixed = (row * 73_856_093 ^ x * 19_349_663) >>> 3;
    return new Vec(mixed % 11 - 5, mixed / 11 % 9 - 4);
  }

  /** Takes the first free place near by, if asked one where no contour runs through the figures. */
  private boolean tried(Vec at, int steps, boolean clearOfContours) {
    for (int step = 0; step < steps; step++) {
      for (int turn = 0; turn < (step == 0 ? 1 : 8); turn++) {
        double angle = StrictMath.PI * turn / 4;
        Vec off = new Vec(StrictMath.cos(angle), StrictMath.sin(angle)).times(STEPS[step]);
        if (placed(at.plus(off), clearOfContours)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean placed(Vec at, boolean clearOfContours) {
    double depth = sheet.depth(at);
    Sounding sounding = new Sounding(SoundingText.of(depth), at);
    Box box = sounding.box();
    boolean land = depth < -ChartOptions.HIGH_WATER;
    if (land
        || !room.isFree(box.grown(1.5))
        || isNear(box, depth)
        || clearOfContours && !isOneBand(box)) {
      return false;
    }
    shown.add(sounding);
    return true;
  }

  private boolean isNear(Box box, double depth) {
    Box clear = box.grown(depth < DEEP ? CLEAR : CLEAR_IN_DEEP);
    return shown.stream().anyMatch(each -> each.box().meets(clear));
  }

  private boolean isOneBand(Box box) {
    int band = band(box.left(), box.top());
    return band == band(box.right(), box.top())
        && band == band(box.left(), box.bottom())
        && band == band(box.right(), box.bottom());
  }

  private int band(double x, double y) {
    double depth = sheet.depth(new Vec(x, y));
    int band = depth < -ChartOptions.HIGH_WATER ? -1 : 0;
    for (double each : ChartContours.LEVELS) {
      band += depth < each ? 0 : 1;
    }
    return band;
  }

  /** Draws soundings, clear of ways that run under them. */
  static void draw(SvgWriter svg, List<Sounding> soundings, ChartInk ink, boolean clear) {
    draw(svg, soundings, ink.faint(), clear ? ink.halo() : null);
  }

  /** Draws the least depths over dangers. */
  static void depths(SvgWriter svg, List<Sounding> depths, ChartInk ink) {
    draw(svg, depths, ink.words(), ink.halo());
  }

  private static void draw(
      SvgWriter svg, List<Sounding> soundings, Palette ink, @Nullable Palette halo) {
    PathData lines = new PathData();
    ChartWords.begin(svg, SIZE, ink, halo, "font-style", "italic");
    for (Sounding each : soundings) {
      each.text().draw(svg, each.at(), SIZE);
      each.text().underline(lines, each.at(), SIZE);
    }
    svg.end();
    if (soundings.stream().anyMatch(each -> each.text().drying())) {
      Pen.line(svg, lines, ink, 0.7);
    }
  }
}
