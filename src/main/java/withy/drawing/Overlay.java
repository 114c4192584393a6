package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;

/**
 * What lies over a chart on the wall.
 *
 * @param way planned for the boat; null for none
 * @param boat null for none
 * @param cross a place that is looked at; null for none, it is then drawn hidden
 * @param missing where a mark was taken away; null where none was
 * @param ring round a mark that is called; null for none, it is then drawn hidden
 * @param counts of answers, beside their tracks
 */
public record Overlay(
    @Nullable Polyline way,
    ChartOptions.@Nullable Boat boat,
    @Nullable Position cross,
    @Nullable Position missing,
    @Nullable Position ring,
    List<Count> counts) {
  /** Nothing. */
  public static final Overlay NONE = new Overlay(null, null, null, null, null, List.of());

  /**
   * How many gave an answer.
   *
   * @param at a place of its track
   */
  public record Count(Position at, String number) {}

  public Overlay {
    counts = List.copyOf(counts);
  }

  public Overlay along(@Nullable Polyline track) {
    return new Overlay(track, boat, cross, missing, ring, counts);
  }

  /** With a boat where she is, on her heading. */
  public Overlay with(Position at, Bearing heading) {
    ChartOptions.Boat placed = new ChartOptions.Boat(at, heading);
    return new Overlay(way, placed, cross, missing, ring, counts);
  }

  public Overlay looking(@Nullable Position at) {
    return new Overlay(way, boat, at, missing, ring, counts);
  }

  public Overlay without(@Nullable Position mark) {
    return new Overlay(way, boat, cross, mark, ring, counts);
  }

  public Overlay round(@Nullable Position mark) {
    return new Overlay(way, boat, cross, missing, mark, counts);
  }

  /** With one more count of answers. */
  public Overlay with(Count count) {
    List<Count> more = new ArrayList<>(counts);
    more.add(count);
    return new Overlay(way, boat, cross, missing, ring, more);
  }
}
