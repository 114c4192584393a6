package withy.core.scenario;

import java.util.List;
import withy.core.geometry.Position;
import withy.core.waterway.Keel;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/**
 * A boat in a stretch of water.
 *
 * @param boat where she is
 * @param marks of the water, the one that is asked about first
 */
public record Sailing(Waterway water, Keel keel, Position boat, List<PlacedMark> marks) {
  public Sailing {
    marks = List.copyOf(marks);
  }
}
