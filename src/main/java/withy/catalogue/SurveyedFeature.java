package withy.catalogue;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.LocalPlane;
import withy.core.geometry.Position;

/**
 * A feature of a file whose geometry is sound.
 *
 * @param place in the file, as {@code features[3]}
 * @param id that the file gives it; null where it gives none
 */
record SurveyedFeature(
    String place, @Nullable String id, FeatureType type, Attributes attributes, Shape shape) {
  /** The place of a point. */
  Position at(LocalPlane plane) {
    return plane.position(shape.parts().get(0).get(0)).rounded();
  }

  /** Its parts on the plane. */
  List<List<Position>> parts(LocalPlane plane) {
    return shape.parts().stream().map(part -> part.stream().map(plane::position).toList()).toList();
  }
}
