package withy.core.waterway;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.mark.Practice;
import withy.core.mark.Travel;

/**
 * The right way of a boat through a stretch of water from end to end, mark by mark.
 *
 * @param travel with or against the conventional direction; none in open water
 * @param calls in the order in which she has the marks abeam
 * @param fixes every {@link #BETWEEN} metres along the track
 */
public record Voyage(Travel travel, Polyline track, List<Call> calls, List<Fix> fixes) {
  /** Metres from one fix to the next. */
  public static final double BETWEEN = 10;

  /** Metres before a mark is abeam at which it is called. */
  public static final double BEFORE = 120;

  public Voyage {
    calls = List.copyOf(calls);
    fixes = List.copyOf(fixes);
  }

  /**
   * Where a boat is on her voyage.
   *
   * @param along metres sailed
   * @param water metres of water there, tide added
   * @param least metres of water where it was least so far, tide added
   */
  public record Fix(double along, Position at, Bearing heading, double water, double least) {}

  /**
   * Where the voyage can be held.
   *
   * @param call of the mark ahead; null at the beginning and at the end
   */
  public record Step(Fix fix, @Nullable Call call) {}

  /**
   * The voyage through a water, in from the sea or out to it.
   *
   * @param fairway the id of the one in which it ends or begins; empty for the main one
   */
  public static Voyage of(Waterway water, Practice practice, String fairway, boolean inbound) {
    return new VoyagePlan(water, practice).voyage(fairway, inbound);
  }

  static Voyage along(Waterway water, Travel travel, Polyline track, List<Call> calls) {
    List<Call> inOrder = new ArrayList<>(calls);
    inOrder.sort(Comparator.comparingDouble(Call::along));
    return new Voyage(travel, track, inOrder, fixes(water, track));
  }

  private static List<Fix> fixes(Waterway water, Polyline track) {
    List<Fix> fixes = new ArrayList<>();
    double length = track.length();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i * BETWEEN <= length; i++) {
      double along = i * BETWEEN;
      Position at = track.at(along);
      Position behind = track.at(along - BETWEEN);
      Bearing heading = behind.bearingTo(track.at(Math.min(length, along + BETWEEN)));
      least = Math.min(least, water.water(at));
      fixes.add(new Fix(along, at, heading, water.water(at), least));
    }
    return fixes;
  }

  /** The fix at or next to a distance sailed. */
  public Fix fix(double along) {
    int nearest = (int) Math.round(along / BETWEEN);
    return fixes.get(Math.max(0, Math.min(fixes.size() - 1, nearest)));
  }

  /** The beginning, a little before each mark, and the end. */
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    steps.add(new Step(fixes.get(0), null));
    for (Call each : calls) {
      steps.add(new Step(fix(each.along() - BEFORE), each));
    }
    steps.add(new Step(fixes.get(fixes.size() - 1), null));
    return List.copyOf(steps);
  }
}
