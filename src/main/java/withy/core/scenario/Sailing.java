package withy.core.scenario;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;
import withy.core.waterway.Keel;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/**
 * A boat in a stretch of water.
 *
 * @param boat where she is
 * @param marks of the water, the one that is asked about first
 * @param clearance the tracks that are drawn past a danger; null where none are
 */
public record Sailing(
    Waterway water,
    Keel keel,
    Position boat,
    List<PlacedMark> marks,
    @Nullable Clearance clearance) {
  public Sailing {
    marks = List.copyOf(marks);
  }

  /** A boat in a water on whose chart no tracks are drawn. */
  public Sailing(Waterway water, Keel keel, Position boat, List<PlacedMark> marks) {
    this(water, keel, boat, marks, null);
  }

  /** The same with tracks drawn past a danger. */
  public Sailing clearing(Clearance drawn) {
    return new Sailing(water, keel, boat, marks, drawn);
  }
}
