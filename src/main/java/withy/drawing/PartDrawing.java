package withy.drawing;

import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.Topmark;

/**
 * Parts of which a mark is put together, each alone and without sky or water, so that it stays
 * plain at the height of a few lines of text.
 */
public final class PartDrawing {
  /** Room for the tallest body, and for a shape that is asked for by itself. */
  private static final double[] TALL = {84, 160};

  private static final double[] LOW = {84, 104};

  /** Room for the highest topmark on its staff. */
  private static final double[] TOPMARK = {40, 76};

  private static final double WATER = 10;

  private PartDrawing() {}

  /** A body in its colours. */
  public static Svg colours(Appearance mark) {
    return standing(mark, TALL);
  }

  /** The shape of a body. */
  public static Svg body(Appearance mark) {
    return standing(mark, MarkDrawing.height(mark) > LOW[1] - 2 * WATER ? TALL : LOW);
  }

  /** What a mark carries, on the upper end of its staff; the body where it carries nothing. */
  public static Svg topmark(Appearance mark) {
    @Nullable Topmark topmark = mark.topmark();
    if (topmark == null) {
      return body(mark);
    }
    SvgWriter svg = SvgWriter.scaled(TOPMARK[0], TOPMARK[1]);
    double middle = (TOPMARK[1] + TopmarkDrawing.height(topmark.shape())) / 2;
    svg.begin("g", "transform", "translate(" + SvgWriter.number(TOPMARK[0] / 2) + " 0)");
    TopmarkDrawing.draw(svg, topmark, middle, false);
    svg.end();
    return svg.finish();
  }

  private static Svg standing(Appearance mark, double[] room) {
    SvgWriter svg = SvgWriter.scaled(room[0], room[1]);
    MarkDrawing.standing(svg, mark, null, room[0] / 2, room[1] - WATER, 1);
    return svg.finish();
  }
}
