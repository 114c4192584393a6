package withy.core.waterway;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;

/**
 * A stretch of water: its depths, what is marked in it and the marks.
 *
 * @param tide metres that the water stands above chart datum
 * @param fairways the main one first; none in open water
 * @param leadingLines in the order of their fairways
 */
public record Waterway(
    DepthField depths,
    double tide,
    List<Fairway> fairways,
    List<Danger> dangers,
    List<PlacedMark> marks,
    List<LeadingLine> leadingLines) {
  /**
   * @throws IllegalArgumentException if two fairways have one id, or a mark serves none of them
   */
  public Waterway {
    fairways = List.copyOf(fairways);
    dangers = List.copyOf(dangers);
    marks = List.copyOf(marks);
    leadingLines = List.copyOf(leadingLines);
    Set<String> ids = new LinkedHashSet<>();
    for (Fairway each : fairways) {
      if (!ids.add(each.id())) {
        throw new IllegalArgumentException("two fairways are called " + each.id());
      }
    }
    for (PlacedMark each : marks) {
      if (each.serves() != null && !ids.contains(each.serves())) {
        throw new IllegalArgumentException("a mark serves " + each.serves() + ", no fairway here");
      }
    }
  }

  /** A water without leading lines. */
  public Waterway(
      DepthField depths,
      double tide,
      List<Fairway> fairways,
      List<Danger> dangers,
      List<PlacedMark> marks) {
    this(depths, tide, fairways, dangers, marks, List.of());
  }

  /** The same water with other marks in it. */
  public Waterway with(List<PlacedMark> others) {
    return new Waterway(depths, tide, fairways, dangers, others, leadingLines);
  }

  /** The fairway of an id. */
  public Optional<Fairway> fairway(String id) {
    return fairways.stream().filter(each -> each.id().equals(id)).findFirst();
  }

  /** The fairway that a mark serves; empty where it serves none. */
  public Optional<Fairway> served(PlacedMark mark) {
    @Nullable String serves = mark.serves();
    return serves == null ? Optional.empty() : fairway(serves);
  }

  /** Metres of water at a place, tide added. */
  public double water(Position place) {
    return depths.depth(place) + tide;
  }

  /**
   * The part of the water within a distance east, west, north and south of a place, with the marks
   * and dangers there.
   */
  public Waterway around(Position middle, double reach) {
    DepthField near = depths.around(middle, reach);
    return new Waterway(
        near,
        tide,
        fairways,
        dangers.stream().filter(each -> near.contains(each.at())).toList(),
        marks.stream().filter(each -> near.contains(each.position())).toList(),
        leadingLines);
  }

  /** Sails a track; all of it is looked at. */
  public Sailed sail(Polyline track, Keel keel) {
    Position where = track.start();
    @Nullable Position touched = null;
    for (int i = 1; i < track.points().size(); i++) {
      DepthAlong leg = new DepthAlong(depths, track.points().get(i - 1), track.points().get(i));
      Position shallowest = leg.shallowest();
      if (water(shallowest) < water(where)) {
        where = shallowest;
      }
      touched = touched == null ? leg.firstBelow(keel.draught() - tide) : touched;
    }
    return new Sailed(water(where), where, touched);
  }
}
