package withy.core.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;

/**
 * How a practice has marks of a kind look.
 *
 * @param bodies the shapes that the practice gives them, in the order of its table; {@link
 *     MarkingRules#allows(Practice, MarkKind, BodyShape)} says what else may be met
 * @param colours of the body, from the top down; of striped bodies the two colours that alternate
 *     from the left
 * @param symbol null where none is painted
 * @param board null but on dayboards
 * @param structures how they may be built; empty where the body shape says all
 * @param topmark null where the practice fits none
 * @param bodiesNeedingTopmark the shapes that do not stand without it
 * @param lights characters in common use, the most usual first; none is the only one allowed, and
 *     empty where such marks are unlit
 * @param retroreflectors from the top down; empty where nothing is known of them
 */
public record MarkLook(
    MarkKind kind,
    List<BodyShape> bodies,
    ColourPattern pattern,
    List<Colour> colours,
    @Nullable Symbol symbol,
    @Nullable Board board,
    List<Structure> structures,
    @Nullable Topmark topmark,
    List<BodyShape> bodiesNeedingTopmark,
    List<LightCharacter> lights,
    List<Retroreflector> retroreflectors) {
  /**
   * @throws IllegalArgumentException if a topmark is needed of which nothing is known, or there is
   *     no body
   */
  public MarkLook {
    bodies = List.copyOf(bodies);
    colours = List.copyOf(colours);
    structures = List.copyOf(structures);
    bodiesNeedingTopmark = List.copyOf(bodiesNeedingTopmark);
    lights = List.copyOf(lights);
    retroreflectors = List.copyOf(retroreflectors);
    if (bodies.isEmpty() || (topmark == null && !bodiesNeedingTopmark.isEmpty())) {
      throw new IllegalArgumentException(kind.id() + " needs a body, and the topmark it demands");
    }
  }

  /**
   * Whether a mark with this body must carry the topmark to be what it is: a beacon must where a
   * pillar must, since neither has a shape that tells.
   */
  public boolean topmarkRequired(BodyShape body) {
    return bodiesNeedingTopmark.contains(body)
        || (body == BodyShape.BEACON && !bodiesNeedingTopmark.isEmpty());
  }

  /** Whether a mark with this body may carry the topmark: a spherical body is its own sphere. */
  public boolean topmarkPossible(BodyShape body) {
    return topmark != null
        && !(body == BodyShape.SPHERICAL && topmark.shape() == TopmarkShape.SPHERE);
  }

  /** Whether such marks stand on the ground. */
  public boolean isFixed() {
    BodyShape body = bodies.get(0);
    return body == BodyShape.BEACON || body == BodyShape.DAYBOARD;
  }

  /** Whether a mark seen so may be one of these: topmark and light are not looked at. */
  boolean isLike(Appearance seen) {
    return bodies.contains(seen.body())
        && pattern == seen.pattern()
        && Colours.match(this, seen.colours())
        && symbol == seen.symbol()
        && Objects.equals(board, seen.board())
        && (seen.structure() == null
            ? structures.isEmpty()
            : structures.contains(seen.structure()));
  }

  /** As pages show it first: the first body, with its topmark if it may carry one, unlit. */
  public Appearance typical() {
    BodyShape body = bodies.get(0);
    for (BodyShape each : bodies) {
      if (topmarkPossible(each) && !topmarkPossible(body)) {
        body = each;
      }
    }
    return appearance(body, topmarkPossible(body), null);
  }

  /** Every body and structure, with and without the topmark, as far as the practice allows it. */
  public List<Appearance> appearances(@Nullable LightCharacter light) {
    List<Appearance> all = new ArrayList<>();
    for (BodyShape body : bodies) {
      for (boolean topmark : new boolean[] {true, false}) {
        if (topmark ? topmarkPossible(body) : !topmarkRequired(body)) {
          all.addAll(built(appearance(body, topmark, light)));
        }
      }
    }
    return List.copyOf(all);
  }

  private List<Appearance> built(Appearance seen) {
    return structures.isEmpty() ? List.of(seen) : structures.stream().map(seen::built).toList();
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
    return new Appearance(
        body,
        pattern,
        colours,
        symbol,
        board,
        structures.isEmpty() ? null : structures.get(0),
        withTopmark ? topmark : null,
        light);
  }
}
