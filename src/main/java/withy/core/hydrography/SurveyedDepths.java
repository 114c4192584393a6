package withy.core.hydrography;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import withy.core.geometry.Position;
import withy.core.hydrography.DepthSurvey.DepthArea;
import withy.core.hydrography.DepthSurvey.Dredged;
import withy.core.hydrography.DepthSurvey.Sounding;
import withy.core.waterway.Danger;
import withy.core.waterway.DepthField;

/**
 * Makes a field of depths of a survey:
 *
 * <ol>
 *   <li>in a depth area the depth runs from the limit towards shallower ground to that towards
 *       deeper ground as the distances to the two run; where one of them is not there, it runs
 *       towards the middle of the area without reaching the other limit;
 *   <li>land rises from {@link #SHORE} above datum at the shore to {@link #INLAND} within 100 m;
 *   <li>what lies in no area takes the depth of the nearest cell that does, smoothed;
 *   <li>a sounding draws the depths round it with it, within the limits of their area;
 *   <li>a fairway is at least as deep as it is kept; a danger rises to its least depth;
 *   <li>the cell of a sounding has the depth of the sounding, that of a danger no more than its
 *       least; of two soundings in one cell the shallower one counts.
 * </ol>
 */
public final class SurveyedDepths {
  /** Most cells from west to east and from south to north. */
  public static final int MOST_CELLS = 160;

  /** Metres above datum to which land reaches at the shore, and behind it. */
  static final double SHORE = 2.8;

  static final double INLAND = 4;
  private static final double FINEST = 10;
  private static final double RISE = 100;
  private static final double DRAWN_ALONG = 120;
  private static final double SHORT_OF_LIMIT = 0.85;
  private static final int SMOOTHINGS = 6;
  private static final int NOWHERE = -1;
  private static final int LAND = -2;

  private final DepthSurvey survey;
  private final Grid grid;
  private final List<double[]> ranges = new ArrayList<>();
  private final int[] kinds;
  private final double[] depths;

  private SurveyedDepths(DepthSurvey survey, Grid grid) {
    this.survey = survey;
    this.grid = grid;
    this.kinds = new int[grid.size()];
    this.depths = new double[grid.size()];
    Arrays.fill(kinds, NOWHERE);
  }

  /**
   * The depths between two corners.
   *
   * @param southWest of the water
   * @param northEast of the water
   */
  public static DepthField of(DepthSurvey survey, Position southWest, Position northEast) {
    double width = northEast.x() - southWest.x();
    double height = northEast.y() - southWest.y();
    double cell = Math.max(FINEST, Math.ceil(Math.max(width, height) / (MOST_CELLS - 1)));
    int columns = Math.max(2, (int) Math.floor(width / cell) + 1);
    int rows = Math.max(2, (int) Math.floor(height / cell) + 1);
    Grid grid = new Grid(southWest, cell, columns, rows);
    return new DepthField(southWest, cell, columns, new SurveyedDepths(survey, grid).depths());
  }

  private double[] depths() {
    classify();
    for (int i = 0; i < ranges.size(); i++) {
      slope(i);
    }
    land();
    unsurveyed();
    soundings();
    survey.fairways().forEach(this::dredge);
    survey.dangers().forEach(this::raise);
    survey.soundings().forEach(each -> depths[grid.at(each.at())] = each.depth());
    survey.soundings().forEach(this::shallower);
    for (Danger each : survey.dangers()) {
      int cell = grid.at(each.at());
      depths[cell] = Math.min(depths[cell], each.leastDepth());
    }
    return depths;
  }

  private void classify() {
    for (DepthArea each : survey.areas()) {
      grid.fill(each.area(), kinds, range(each.least(), each.most()));
    }
    survey.land().forEach(each -> grid.fill(each, kinds, LAND));
  }

  private int range(double least, double most) {
    for (int i = 0; i < ranges.size(); i++) {
      if (ranges.get(i)[0] == least && ranges.get(i)[1] == most) {
        return i;
      }
    }
    ranges.add(new double[] {least, most});
    return ranges.size() - 1;
  }

  private double middle(int kind) {
    return kind == LAND ? -INLAND : (ranges.get(kind)[0] + ranges.get(kind)[1]) / 2;
  }

  private void slope(int kind) {
    double own = middle(kind);
    double[] shallower =
        grid.distances(i -> kinds[i] != NOWHERE && kinds[i] != kind && middle(kinds[i]) < own);
    double[] deeper =
        grid.distances(i -> kinds[i] != NOWHERE && kinds[i] != kind && middle(kinds[i]) > own);
    double furthestUp = furthest(kind, shallower);
    double furthestDown = furthest(kind, deeper);
    double least = ranges.get(kind)[0];
    double most = ranges.get(kind)[1];
    for (int i = 0; i < depths.length; i++) {
      if (kinds[i] == kind) {
        double share = share(shallower[i], deeper[i], furthestUp, furthestDown);
        depths[i] = least + (most - least) * share;
      }
    }
  }

  private double furthest(int kind, double[] distances) {
    double furthest = 0;
    for (int i = 0; i < distances.length; i++) {
      if (kinds[i] == kind) {
        furthest = Math.max(furthest, distances[i]);
      }
    }
    return furthest;
  }

  private static double share(double up, double down, double furthestUp, double furthestDown) {
    if (Double.isInfinite(up)) {
      return Double.isInfinite(down) ? 0.5 : 1 - SHORT_OF_LIMIT * down / furthestDown;
    }
    return Double.isInfinite(down) ? SHORT_OF_LIMIT * up / furthestUp : up / (up + down);
  }

  private void land() {
    double[] offshore = grid.distances(i -> kinds[i] != LAND);
    for (int i = 0; i < depths.length; i++) {
      if (kinds[i] == LAND) {
        depths[i] = -SHORE - (INLAND - SHORE) * Math.min(1, offshore[i] / RISE);
      }
    }
  }

  /** Fills from the nearest cell known, then lets the depths run into one another. */
  private void unsurveyed() {
    boolean[] known = new boolean[depths.length];
    for (int i = 0; i < depths.length; i++) {
      known[i] = kinds[i] != NOWHERE;
    }
    for (Sounding each : survey.soundings()) {
      int cell = grid.at(each.at());
      depths[cell] = known[cell] ? depths[cell] : each.depth();
      known[cell] = true;
    }
    double[] off = grid.distances(i -> known[i]);
    boolean[] filled = known.clone();
    for (double ring = grid.cell(); fillRing(off, filled, ring); ring += grid.cell()) {
      continue;
    }
    for (int i = 0; i < SMOOTHINGS; i++) {
      smooth(known);
    }
  }

  /** Fills the cells up to a distance; whether there are any beyond it. */
  private boolean fillRing(double[] off, boolean[] filled, double ring) {
    boolean more = false;
    boolean[] before = filled.clone();
    for (int i = 0; i < depths.length; i++) {
      if (!before[i] && off[i] <= ring + 1e-9) {
        depths[i] = mean(i, before);
        filled[i] = true;
      }
      more |= off[i] > ring && !Double.isInfinite(off[i]);
    }
    return more;
  }

  private void smooth(boolean[] known) {
    boolean[] all = new boolean[depths.length];
    Arrays.fill(all, true);
    for (int i = 0; i < depths.length; i++) {
      if (!known[i]) {
        depths[i] = mean(i, all);
      }
    }
  }

  /** The mean of the neighbours that count; the depth itself where none does. */
  private double mean(int index, boolean[] counted) {
    double sum = 0;
    int count = 0;
    for (int other : around(index, 1)) {
      if (other != index && counted[other]) {
        sum += depths[other];
        count++;
      }
    }
    return count == 0 ? depths[index] : sum / count;
  }

  private List<Integer> around(int index, int reach) {
    List<Integer> cells = new ArrayList<>();
    int column = index % grid.columns();
    int row = index / grid.columns();
    for (int y = Math.max(0, row - reach); y <= Math.min(grid.rows() - 1, row + reach); y++) {
      for (int x = Math.max(0, column - reach);
          x <= Math.min(grid.columns() - 1, column + reach);
          x++) {
        cells.add(y * grid.columns() + x);
      }
    }
    return cells;
  }

  /** Each sounding pulls the depths round it by what it differs from what was thought there. */
  private void soundings() {
    double[] pull = new double[depths.length];
    double[] weight = new double[depths.length];
    for (Sounding each : survey.soundings()) {
      int cell = grid.at(each.at());
      double difference = each.depth() - depths[cell];
      for (int other : around(cell, (int) Math.ceil(DRAWN_ALONG / grid.cell()))) {
        double near = 1 - grid.centre(cell).distanceTo(grid.centre(other)) / DRAWN_ALONG;
        if (near > 0) {
          pull[other] += near * near * difference;
          weight[other] += near * near;
        }
      }
    }
    for (int i = 0; i < depths.length; i++) {
      if (kinds[i] != LAND && weight[i] > 0) {
        depths[i] = held(i, depths[i] + pull[i] / Math.max(1, weight[i]));
      }
    }
  }

  private double held(int index, double depth) {
    if (kinds[index] == NOWHERE) {
      return depth;
    }
    double[] range = ranges.get(kinds[index]);
    return Math.min(Math.max(depth, range[0]), range[1]);
  }

  /**
   * Cells beside the edge are deepened as well: the depth at the edge is bilinear between centres
   * that may lie the diagonal of a cell off it.
   */
  private void dredge(Dredged dredged) {
    Double kept = dredged.depth();
    if (kept == null) {
      return;
    }
    double half = dredged.fairway().width() / 2 + grid.cell() * StrictMath.sqrt(2);
    for (int i = 0; i < depths.length; i++) {
      if (depths[i] < kept
          && kinds[i] != LAND
          && dredged.fairway().line().foot(grid.centre(i)).distance() <= half) {
        depths[i] = kept;
      }
    }
  }

  private void raise(Danger danger) {
    for (int i = 0; i < depths.length; i++) {
      double share = grid.centre(i).distanceTo(danger.at()) / danger.radius();
      depths[i] = Seabed.over(danger, share, depths[i]);
    }
  }

  private void shallower(Sounding sounding) {
    int cell = grid.at(sounding.at());
    depths[cell] = Math.min(depths[cell], sounding.depth());
  }
}
