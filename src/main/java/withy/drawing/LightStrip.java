package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import withy.core.light.LightColour;
import withy.core.light.LightTimeline;
import withy.core.light.Phase;

/**
 * The still picture of a rhythm: light and dark as lengths over at least one whole period, with
 * seconds. It never prints the character.
 */
public final class LightStrip {
  static final double WIDTH = 320;
  static final double HEIGHT = 50;
  private static final double LEFT = 14;
  private static final double RIGHT = 284;
  private static final double TOP = 4;
  private static final double BAR = 22;

  /** Of figures in a picture that fills a phone. */
  static final double ALONE = 14;

  /** Of figures in a picture that shares a phone with a plan. */
  static final double BESIDE_PLAN = 19;

  private static final int LEAST_MILLIS = 4000;

  private final SvgWriter svg;
  private final LightTimeline timeline;
  private final Lettering lettering;
  private final boolean letters;
  private final double size;
  private final double scale;
  private final int span;

  private LightStrip(
      SvgWriter svg,
      LightTimeline timeline,
      int span,
      Lettering lettering,
      boolean letters,
      double size) {
    this.svg = svg;
    this.timeline = timeline;
    this.lettering = lettering;
    this.letters = letters;
    this.size = size;
    this.span = span;
    this.scale = (RIGHT - LEFT) / span;
  }

  /**
   * The strip as a picture of its own.
   *
   * @param letters whether each light is named by its letter (R, G, W, Y, Bu), where its colour is
   *     not what is asked
   */
  public static Svg of(LightTimeline timeline, Lettering lettering, boolean letters) {
    SvgWriter svg = SvgWriter.scaled(WIDTH, HEIGHT);
    draw(svg, timeline, lettering, letters, ALONE);
    return svg.finish();
  }

  /**
   * The strip of one light among others that are to be told apart: all begin together and show the
   * same time.
   *
   * @param span milliseconds shown, as {@link #span} gives for all of them
   */
  public static Svg alone(LightTimeline timeline, int span, Lettering lettering, boolean letters) {
    SvgWriter svg = SvgWriter.scaled(WIDTH, HEIGHT);
    draw(svg, timeline, span, lettering, letters, ALONE);
    return svg.finish();
  }

  /** The time in milliseconds that shows at least one whole period of each light. */
  public static int span(List<LightTimeline> lights) {
    return lights.stream().mapToInt(LightStrip::wholePeriods).max().orElse(LEAST_MILLIS);
  }

  private static int wholePeriods(LightTimeline timeline) {
    int period = timeline.periodMillis().orElse(LEAST_MILLIS);
    return Math.max(1, (LEAST_MILLIS + period - 1) / period) * period;
  }

  /**
   * @param size of the figures
   */
  static void draw(
      SvgWriter svg, LightTimeline timeline, Lettering lettering, boolean letters, double size) {
    draw(svg, timeline, wholePeriods(timeline), lettering, letters, size);
  }

  private static void draw(
      SvgWriter svg,
      LightTimeline timeline,
      int span,
      Lettering lettering,
      boolean letters,
      double size) {
    svg.element("rect", "width", WIDTH, "height", HEIGHT, "fill", Palette.NIGHT);
    LightStrip strip = new LightStrip(svg, timeline, span, lettering, letters, size);
    strip.bars();
    new TimeAxis(svg, strip.scale, lettering, size).draw(LEFT, RIGHT, TOP + BAR);
    if (letters) {
      strip.name();
    }
  }

  private void bars() {
    double at = LEFT;
    box(LEFT, TOP, RIGHT - LEFT, BAR, Palette.ECLIPSE);
    for (Phase each : phases()) {
      double width = each.millis() * scale;
      bar(each, at, width);
      at += width;
    }
    svg.element(
        "rect",
        "x",
        LEFT,
        "y",
        TOP,
        "width",
        RIGHT - LEFT,
        "height",
        BAR,
        "fill",
        "none",
        "stroke",
        Palette.NIGHT_INK,
        "stroke-width",
        0.8);
  }

  private void box(double x, double y, double width, double height, Palette fill) {
    svg.element("rect", "x", x, "y", y, "width", width, "height", height, "fill", fill);
  }

  /** The phases of the whole strip, the last cut where it ends. */
  private List<Phase> phases() {
    List<Phase> phases = new ArrayList<>();
    int shown = 0;
    for (int i = 0; shown < span; i = (i + 1) % timeline.phases().size()) {
      Phase each = timeline.phases().get(i);
      int millis = timeline.fixed() ? span : Math.min(each.millis(), span - shown);
      phases.add(new Phase(each.colour(), millis, each.high()));
      shown += millis;
    }
    return phases;
  }

  private void bar(Phase phase, double x, double width) {
    LightColour colour = phase.colour();
    boolean low = !phase.high() && timeline.phases().stream().anyMatch(Phase::high);
    double height = low ? BAR / 2 : BAR;
    if (colour != null) {
      box(x, TOP + BAR - height, width, height, Palette.of(colour));
    }
    write(phase, x + width / 2, width, low);
  }

  /** The length of a phase, and its letter where the colours change, as far as there is room. */
  private void write(Phase phase, double middle, double width, boolean low) {
    LightColour colour = phase.colour();
    String letter = letters && colour != null && colours() > 1 ? colour.abbreviation() : "";
    String length = timeline.fixed() ? "" : lettering.seconds(phase.millis() / 1000.0);
    String words = (letter + " " + length).strip();
    String fitting = fits(words, width) ? words : letter;
    if (!fitting.isEmpty() && fits(fitting, width)) {
      Palette ink = colour == null || low ? Palette.NIGHT_INK : Palette.BLACK;
      Pen.letters(svg, fitting, new Vec(middle, TOP + BAR / (low ? 4 : 2)), size, ink);
    }
  }

  private long colours() {
    return timeline.phases().stream()
        .filter(each -> !each.dark())
        .map(Phase::colour)
        .distinct()
        .count();
  }

  /** The letter of a light of one colour, behind the bar. */
  private void name() {
    for (Phase each : timeline.phases()) {
      LightColour colour = each.colour();
      if (colour != null && colours() == 1) {
        Vec behind = new Vec(RIGHT + 16, TOP + BAR / 2);
        Pen.letters(svg, colour.abbreviation(), behind, size, Palette.NIGHT_INK);
        return;
      }
    }
  }

  private boolean fits(String words, double width) {
    return words.length() * 0.56 * size + 3 <= width;
  }
}
