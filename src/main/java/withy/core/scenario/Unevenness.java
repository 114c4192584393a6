package withy.core.scenario;

/**
 * The unevenness of a sea floor: value noise over a lattice, smooth between its points, the same
 * everywhere for the same seed.
 *
 * @param spacing metres between the points of the lattice
 */
record Unevenness(long seed, double spacing) {
  /** From -1 to 1. */
  double at(double x, double y) {
    double across = x / spacing;
    double up = y / spacing;
    long column = (long) Math.floor(across);
    long row = (long) Math.floor(up);
    double east = smooth(across - column);
    double north = smooth(up - row);
    double south = value(column, row) * (1 - east) + value(column + 1, row) * east;
    double above = value(column, row + 1) * (1 - east) + value(column + 1, row + 1) * east;
    return south * (1 - north) + above * north;
  }

  static double smooth(double share) {
    double held = Math.min(1, Math.max(0, share));
    return held * held * (3 - 2 * held);
  }

  private double value(long column, long row) {
    long z = Chance.scrambled(seed ^ Chance.scrambled(column * 0x1f1f1f1fL + row));
    return (z >> 11) / (double) (1L << 52);
  }
}
