package withy.core.mark;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;

/**
 * How a practice has marks of a kind look.
 *
 * @param bodies the shapes that the practice gives its buoys, in the order of its table; {@link
 *     MarkingRules#allows(Practice, MarkKind, BodyShape)} says what else may be met
 * @param colours of the body, from the top down; of striped bodies the two colours that alternate
 *     from the left
 * @param topmark null where the practice fits none
 * @param bodiesNeedingTopmark the shapes that do not stand without it
 * @param lights characters in common use, the most usual first; none is the only one allowed
 */
public record MarkLook(
    MarkKind kind,
    List<BodyShape> bodies,
    ColourPattern pattern,
    List<Colour> colours,
    @Nullable Topmark topmark,
    List<BodyShape> bodiesNeedingTopmark,
    List<LightCharacter> lights) {
  /**
   * @throws IllegalArgumentException if a topmark is needed of which nothing is known, or there is
   *     no body
   */
  public MarkLook {
    bodies = List.copyOf(bodies);
    colours = List.copyOf(colours);
    bodiesNeedingTopmark = List.copyOf(bodiesNeedingTopmark);
    lights = List.copyOf(lights);
    if (bodies.isEmpty() || (topmark == null && !bodiesNeedingTopmark.isEmpty())) {
      throw new IllegalArgumentException(kind.id() + " needs a body, and the topmark it demands");
    }
  }

  /** Whether a mark with this body must carry the topmark to be what it is. */
  public boolean topmarkRequired(BodyShape body) {
    return bodiesNeedingTopmark.contains(body);
  }

  /** Whether a mark with this body may carry the topmark: a spherical body is its own sphere. */
  public boolean topmarkPossible(BodyShape body) {
    return topmark != null
        && !(body == BodyShape.SPHERICAL && topmark.shape() == TopmarkShape.SPHERE);
  }

  /**
   * One mark of this kind, as it stands on the water.
   *
   * @param light null for an unlit mark
   * @throws IllegalArgumentException if the body needs the topmark and has none, or cannot carry it
   */
  public Appearance appearance(
      BodyShape body, boolean withTopmark, @Nullable LightCharacter light) {
    if (withTopmark ? !topmarkPossible(body) : topmarkRequired(body)) {
      throw new IllegalArgumentException(
          kind.id()
              + " "
              + body.id()
              + (withTopmark ? " cannot carry a" : " needs its")
              + " topmark");
    }
    return new Appearance(body, pattern, colours, withTopmark ? topmark : null, light);
  }
}
