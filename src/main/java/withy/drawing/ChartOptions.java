package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;

/**
 * What a chart shows beside the water.
 *
 * @param labels whether numbers, colour letters and light characters stand beside the marks
 * @param night whether it is drawn dark, the lights shining
 * @param ways of boats; safe ones are drawn over the others
 * @param boat null for none
 * @param touches where keels met the ground
 * @param asked the mark that is asked about, which bears a ring; null for none
 * @param depths whether soundings, contours, tints and dangers are shown, or land and water alone
 * @param met places of marks that bear the numbers of their order, from 1
 */
public record ChartOptions(
    boolean labels,
    boolean night,
    List<Way> ways,
    @Nullable Boat boat,
    List<Touch> touches,
    @Nullable Position asked,
    boolean depths,
    List<Position> met) {
  /**
   * Metres above datum up to which the water rises; what dries higher is land. About a mean tide of
   * narrow seas, no source.
   */
  public static final double HIGH_WATER = 2.5;

  /**
   * A way over the water.
   *
   * @param safe whether it is drawn whole, as the safe one, or dashed
   * @param letter by which it is told from others that are drawn alike; null for none
   */
  public record Way(Polyline line, boolean safe, @Nullable String letter) {
    Way(Polyline line, boolean safe) {
      this(line, safe, null);
    }
  }

  /** A boat where she is, on her heading. */
  public record Boat(Position at, Bearing heading) {}

  /**
   * Where a keel met the ground.
   *
   * @param water metres that stood there, tide added
   */
  public record Touch(Position at, double water) {}

  public ChartOptions {
    ways = List.copyOf(ways);
    touches = List.copyOf(touches);
    met = List.copyOf(met);
  }

  /** The water and its marks alone, by day. */
  public static ChartOptions plain() {
    return new ChartOptions(true, false, List.of(), null, List.of(), null, true, List.of());
  }

  public ChartOptions withoutLabels() {
    return new ChartOptions(false, night, ways, boat, touches, asked, depths, met);
  }

  public ChartOptions atNight() {
    return new ChartOptions(labels, true, ways, boat, touches, asked, depths, met);
  }

  /** With one more way; the safe one is drawn whole, others dashed. */
  public ChartOptions with(Polyline line, boolean safe) {
    List<Way> more = new ArrayList<>(ways);
    more.add(new Way(line, safe));
    return new ChartOptions(labels, night, more, boat, touches, asked, depths, met);
  }

  public ChartOptions with(Position at, Bearing heading) {
    return new ChartOptions(
        labels, night, ways, new Boat(at, heading), touches, asked, depths, met);
  }

  /** With one more place where a keel met the ground in metres of water, tide added. */
  public ChartOptions touching(Position at, double water) {
    List<Touch> more = new ArrayList<>(touches);
    more.add(new Touch(at, water));
    return new ChartOptions(labels, night, ways, boat, more, asked, depths, met);
  }

  /** With one more of several ways that are told apart by their letters alone. */
  public ChartOptions with(Polyline line, String letter) {
    List<Way> more = new ArrayList<>(ways);
    more.add(new Way(line, false, letter));
    return new ChartOptions(labels, night, more, boat, touches, asked, depths, met);
  }

  /** With a ring round the mark that is asked about. */
  public ChartOptions asking(Position mark) {
    return new ChartOptions(labels, night, ways, boat, touches, mark, depths, met);
  }

  /** Land, water and marks without what tells how deep it is. */
  public ChartOptions withoutDepths() {
    return new ChartOptions(labels, night, ways, boat, touches, asked, false, met);
  }

  /** With numbers from 1 beside the marks at some places, in their order. */
  public ChartOptions meeting(List<Position> places) {
    return new ChartOptions(labels, night, ways, boat, touches, asked, depths, places);
  }
}
