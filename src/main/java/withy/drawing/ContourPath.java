package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import withy.core.geometry.Position;

/**
 * Rings of equal depth as the data of one path, smooth and short: in whole tenths of a unit, each
 * ring a quadratic spline whose control points are places of the ring. A ring that follows the rim
 * of the field runs outside the frame there.
 */
final class ContourPath {
  /** Of the places kept of a ring, in units of the picture. */
  static final double APART = 2.4;

  private static final double BEYOND = 4;

  /** Of rings that are drawn, in units: a chart leaves out small deeps, never small shoals. */
  private static final double LEAST_LENGTH = 9;

  private static final double LEAST_OF_DEEPS = 24;

  /** Places of a ring that is long enough to be smoothed twice. */
  private static final int LONG = 24;

  private final StringBuilder data = new StringBuilder();
  private final ChartSheet sheet;
  private boolean bare;
  private int x;
  private int y;

  private ContourPath(ChartSheet sheet) {
    this.sheet = sheet;
  }

  /** The path of all the rings, to be drawn at a tenth of its size. */
  static String of(List<List<Position>> rings, ChartSheet sheet) {
    ContourPath path = new ContourPath(sheet);
    for (List<Position> each : rings) {
      path.ring(path.smoothed(path.kept(each)));
    }
    return path.data.toString();
  }

  /** The places of a ring that are kept: evenly spaced, corners outside the frame twice. */
  private List<Vec> kept(List<Position> ring) {
    List<Vec> all = ring.stream().map(sheet::at).map(this::pushed).toList();
    List<Vec> kept = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      Vec here = all.get(i);
      Vec before = all.get((i + all.size() - 1) % all.size());
      Vec after = all.get((i + 1) % all.size());
      if (!sheet.area().contains(here)) {
        if (!isStraight(before, here, after)) {
          kept.add(here);
          kept.add(here);
        }
      } else if (kept.isEmpty() || kept.get(kept.size() - 1).minus(here).length() >= APART) {
        kept.add(here);
      }
    }
    return kept;
  }

  /**
   * Takes the steps of a decimetre out of a line over gently sloping ground: twice each place moves
   * half way to the middle of its neighbours.
   */
  private List<Vec> smoothed(List<Vec> kept) {
    List<Vec> points = kept;
    for (int pass = 0; pass < (kept.size() > LONG ? 2 : 1); pass++) {
      List<Vec> next = new ArrayList<>();
      for (int i = 0; i < points.size(); i++) {
        Vec here = points.get(i);
        Vec before = points.get((i + points.size() - 1) % points.size());
        Vec after = points.get((i + 1) % points.size());
        boolean free = sheet.area().contains(here);
        next.add(free ? here.times(0.5).plus(before.plus(after).times(0.25)) : here);
      }
      points = next;
    }
    return points;
  }

  private static boolean isStraight(Vec before, Vec here, Vec after) {
    return before.x() == here.x() && here.x() == after.x()
        || before.y() == here.y() && here.y() == after.y();
  }

  /** Moves a place on the rim outside the frame, where the frame hides the line. */
  private Vec pushed(Vec at) {
    Box area = sheet.area();
    double edge = 0.001;
    double right = at.x() > area.right() - edge ? BEYOND : 0;
    double down = at.y() > area.bottom() - edge ? BEYOND : 0;
    return new Vec(
        at.x() < area.left() + edge ? area.left() - BEYOND : at.x() + right,
        at.y() < area.top() + edge ? area.top() - BEYOND : at.y() + down);
  }

  private void ring(List<Vec> points) {
    double length = 0;
    for (int i = 1; i < points.size(); i++) {
      length += points.get(i).minus(points.get(i - 1)).length();
    }
    if (points.size() < 3 || length < (isDeep(points) ? LEAST_OF_DEEPS : LEAST_LENGTH)) {
      return;
    }
    int size = points.size();
    int[] first = middle(points.get(0), points.get(1));
    absolute(first);
    for (int i = 1; i <= size; i++) {
      Vec here = points.get(i % size);
      int[] next = middle(here, points.get((i + 1) % size));
      if (i == 1) {
        command('q');
        number(even(here.x()) - x);
        number(even(here.y()) - y);
        relative(next);
        command('t');
      } else {
        relative(next);
      }
    }
    data.append('z');
  }

  /** Whether the deeper water lies inside: the ring has the shallower on its right. */
  private static boolean isDeep(List<Vec> ring) {
    double area = 0;
    for (int i = 0; i < ring.size(); i++) {
      Vec here = ring.get(i);
      Vec next = ring.get((i + 1) % ring.size());
      area += here.x() * next.y() - next.x() * here.y();
    }
    return area < 0;
  }

  private void absolute(int[] to) {
    command('M');
    number(to[0]);
    number(to[1]);
    x = to[0];
    y = to[1];
  }

  private void relative(int[] to) {
    number(to[0] - x);
    number(to[1] - y);
    x = to[0];
    y = to[1];
  }

  private void command(char letter) {
    data.append(letter);
    bare = true;
  }

  private void number(int value) {
    if (!bare && value >= 0) {
      data.append(' ');
    }
    data.append(value);
    bare = false;
  }

  private static int[] middle(Vec one, Vec other) {
    return new int[] {(even(one.x()) + even(other.x())) / 2, (even(one.y()) + even(other.y())) / 2};
  }

  /** Tenths, even so that the middle of two is whole and the spline's reflections stay exact. */
  private static int even(double value) {
    return 2 * (int) Math.round(value * 5);
  }
}
