package withy.core.hydrography;

import withy.core.geometry.Polyline;
import withy.core.geometry.Polyline.Foot;
import withy.core.geometry.Position;

/**
 * A line that is asked for its nearest place over and over from one place to the next: what {@link
 * Polyline#foot} says, found sooner by beginning where the last one was found.
 */
final class Course {
  /** Legs that are looked at together, or passed over together. */
  private static final int STRETCH = 5;

  private final int legs;
  private final double[] x;
  private final double[] y;
  private final double[] gone;
  private final double[] whole;
  private final double[][] boxes;
  private int last;

  Course(Polyline line) {
    int points = line.points().size();
    this.legs = points - 1;
    this.x = new double[points];
    this.y = new double[points];
    this.gone = new double[points];
    for (int i = 0; i < points; i++) {
      x[i] = line.points().get(i).x();
      y[i] = line.points().get(i).y();
      gone[i] = i == 0 ? 0 : gone[i - 1] + length(x[i] - x[i - 1], y[i] - y[i - 1]);
    }
    this.whole = box(0, legs);
    this.boxes = new double[(legs + STRETCH - 1) / STRETCH][];
    for (int i = 0; i < boxes.length; i++) {
      boxes[i] = box(i * STRETCH, Math.min(legs, (i + 1) * STRETCH));
    }
  }

  private static double length(double across, double up) {
    return Math.sqrt(across * across + up * up);
  }

  private double[] box(int from, int to) {
    double[] box = {x[from], y[from], x[from], y[from]};
    for (int i = from + 1; i <= to; i++) {
      box[0] = Math.min(box[0], x[i]);
      box[1] = Math.min(box[1], y[i]);
      box[2] = Math.max(box[2], x[i]);
      box[3] = Math.max(box[3], y[i]);
    }
    return box;
  }

  /** Whether a place may lie within a distance of the line, judged by the box round it. */
  boolean mayBeWithin(double metres, Position place) {
    return place.x() > whole[0] - metres
        && place.y() > whole[1] - metres
        && place.x() < whole[2] + metres
        && place.y() < whole[3] + metres;
  }

  /** Where the line comes nearest to a place. */
  Foot foot(Position place) {
    Search search = new Search(place);
    search.stretch(last);
    for (int i = 0; i < boxes.length; i++) {
      if (i != last && search.mayBeat(boxes[i])) {
        search.stretch(i);
      }
    }
    last = search.leg / STRETCH;
    return search.found();
  }

  /** The nearest place so far. */
  private final class Search {
    private final double px;
    private final double py;
    private double best = Double.POSITIVE_INFINITY;
    private double share;
    private int leg;

    Search(Position place) {
      this.px = place.x();
      this.py = place.y();
    }

    boolean mayBeat(double[] box) {
      double across = Math.max(0, Math.max(box[0] - px, px - box[2]));
      double up = Math.max(0, Math.max(box[1] - py, py - box[3]));
      return across * across + up * up < best;
    }

    void stretch(int stretch) {
      for (int i = stretch * STRETCH; i < Math.min(legs, (stretch + 1) * STRETCH); i++) {
        double dx = x[i + 1] - x[i];
        double dy = y[i + 1] - y[i];
        double at = ((px - x[i]) * dx + (py - y[i]) * dy) / (dx * dx + dy * dy);
        double held = Math.min(1, Math.max(0, at));
        double ox = px - x[i] - held * dx;
        double oy = py - y[i] - held * dy;
        double off = ox * ox + oy * oy;
        if (off < best) {
          best = off;
          share = held;
          leg = i;
        }
      }
    }

    Foot found() {
      double dx = x[leg + 1] - x[leg];
      double dy = y[leg + 1] - y[leg];
      boolean port = dx * (py - y[leg]) - dy * (px - x[leg]) > 0;
      double along = gone[leg] + share * (gone[leg + 1] - gone[leg]);
      return new Foot(along, Math.sqrt(best) * (port ? -1 : 1));
    }
  }
}
