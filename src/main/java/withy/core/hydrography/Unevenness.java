package withy.core.hydrography;

import withy.core.Chance;

/**
 * The unevenness of a sea floor: value noise over a lattice, smooth between its points, the same
 * everywhere for the same seed. It keeps the corners of the last square of the lattice, since the
 * next place mostly lies in it as well.
 */
final class Unevenness {
  private final long seed;
  private final double spacing;
  private long column = Long.MIN_VALUE;
  private long row;
  private double southWest;
  private double southEast;
  private double northWest;
  private double northEast;

  /**
   * An unevenness.
   *
   * @param spacing metres between the points of the lattice
   */
  Unevenness(long seed, double spacing) {
    this.seed = seed;
    this.spacing = spacing;
  }

  /** From -1 to 1. */
  double at(double x, double y) {
    double across = Math.floor(x / spacing);
    double up = Math.floor(y / spacing);
    look((long) across, (long) up);
    double east = smooth(x / spacing - across);
    double north = smooth(y / spacing - up);
    double south = southWest * (1 - east) + southEast * east;
    double above = northWest * (1 - east) + northEast * east;
    return south * (1 - north) + above * north;
  }

  private void look(long atColumn, long atRow) {
    if (atColumn != column || atRow != row) {
      column = atColumn;
      row = atRow;
      southWest = value(column, row);
      southEast = value(column + 1, row);
      northWest = value(column, row + 1);
      northEast = value(column + 1, row + 1);
    }
  }

  static double smooth(double share) {
    double held = Math.min(1, Math.max(0, share));
    return held * held * (3 - 2 * held);
  }

  private double value(long atColumn, long atRow) {
    long z = Chance.scrambled(seed ^ Chance.scrambled(atColumn * 0x1f1f1f1fL + atRow));
    return (z >> 11) / (double) (1L << 52);
  }
}
