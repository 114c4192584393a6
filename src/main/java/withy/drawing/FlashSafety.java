package withy.drawing;

import java.util.List;
import withy.core.light.LightTimeline;

/**
 * Whether a drawn light can harm by flashing (WCAG 2.2, success criterion 2.3.1): at most three
 * flashes in any second, or all that flashes small enough.
 */
public final class FlashSafety {
  /** A quarter of 341 by 256 CSS pixels: below it any flashing is small. */
  public static final double SAFE_AREA = 21_824;

  /** The most flashes in any second that are safe whatever their size. */
  public static final int SAFE_RATE = 3;

  private FlashSafety() {}

  /**
   * The radius in CSS pixels of each of some lights drawn at once, such that all of them together
   * cover no more than one alone, which is safe at four times its size.
   */
  static double radius(int lights) {
    return LightDisc.RADIUS / StrictMath.sqrt(Math.max(1, lights));
  }

  /** Whether some lights at once, each of the size that {@link #radius} gives, are safe. */
  public static boolean safe(List<LightTimeline> lights, double zoom) {
    int flashes = lights.stream().mapToInt(LightTimeline::mostFlashesInOneSecond).sum();
    return flashes <= SAFE_RATE || litArea() * zoom * zoom <= SAFE_AREA;
  }

  /** CSS pixels squared of everything that is lit by one light, its soft edge included. */
  public static double litArea() {
    return StrictMath.PI * LightDisc.RADIUS * LightDisc.RADIUS;
  }

  /**
   * Whether some lights drawn together are safe at a zoom of the page.
   *
   * @param zoom 1 at 100 %
   */
  public static boolean safe(LightTimeline timeline, int lights, double zoom) {
    return lights * timeline.mostFlashesInOneSecond() <= SAFE_RATE
        || lights * litArea() * zoom * zoom <= SAFE_AREA;
  }

  /**
   * Whether lights in rows and columns are safe: only those within one field of view, 341 by 256
   * CSS pixels, count together.
   *
   * @param across CSS pixels from the middle of a light to that of its neighbour
   * @param down the same from row to row
   * @param zoom 1 at 100 %
   */
  public static boolean safeInRows(double across, double down, double zoom) {
    double columns = Math.floor(341 / (across * zoom)) + 1;
    double rows = Math.floor(256 / (down * zoom)) + 1;
    return columns * rows * litArea() * zoom * zoom <= SAFE_AREA;
  }
}
