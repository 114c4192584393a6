package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.geometry.Bearing;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.mark.MarkingRules;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;
import withy.core.waterway.Steering;

/** Leading marks before or behind a boat on their line or a little off it. */
final class LeadingLayout {
  /** How far a small gap between the marks goes, in tenths of a degree. */
  private static final int NARROW = 18;

  private static final int WIDE = 30;
  private static final List<Steering> WAYS = List.of(Steering.values());

  private final Task task;
  private final Chance chance;
  private final boolean astern;

  private LeadingLayout(Task task, boolean astern) {
    this.task = task;
    this.chance = task.chance();
    this.astern = astern;
  }

  /** One pair ahead, one pair astern, or three pairs ahead; the first asks for the given way. */
  static Scenario drawn(Task task, Steering key) {
    return switch (task.chance().below(3)) {
      case 0 -> new LeadingLayout(task, false).single(key);
      case 1 -> new LeadingLayout(task, true).single(key);
      default -> new LeadingLayout(task, false).three(key);
    };
  }

  private Scenario single(Steering key) {
    List<SightedMark> pair = pair(Drawn.bearing(chance), key, chance.oneIn(2) ? NARROW : WIDE);
    return scenario(heading(pair.get(0).bearing(), 12), pair);
  }

  /** Three pairs side by side, the one that the chart's bearing names among them by chance. */
  private Scenario three(Steering key) {
    List<Bearing> lines = new ArrayList<>();
    lines.add(Drawn.bearing(chance));
    lines.add(lines.get(0).plus(chance.between(13, 17)));
    lines.add(lines.get(1).plus(chance.between(13, 17)));
    Bearing charted = lines.remove(chance.below(lines.size()));
    List<SightedMark> marks = new ArrayList<>(pair(charted, key, NARROW));
    for (Bearing each : lines) {
      marks.addAll(pair(each, chance.pick(WAYS), NARROW));
    }
    return scenario(heading(charted, 10), marks);
  }

  /** Never so near to the marks that it might be thought to point at them. */
  private Bearing heading(Bearing marks, int most) {
    int off = chance.between(5, most);
    Bearing ahead = Bearing.of(Math.round(marks.degrees())).plus(chance.oneIn(2) ? off : -off);
    return astern ? ahead.reciprocal() : ahead;
  }

  private Scenario scenario(Bearing heading, List<SightedMark> marks) {
    Situation situation = Situation.steering(heading, task.time(), view());
    return new Scenario(task.practice(), situation, marks);
  }

  private View view() {
    return task.time() == TimeOfDay.NIGHT ? View.LIGHT : View.NEAR;
  }

  /**
   * The front and the rear mark of a line, from a place off it that asks for a way to steer. From
   * right of the line, facing the marks, the front one is seen left of the rear one.
   */
  private List<SightedMark> pair(Bearing line, Steering way, int most) {
    int open = open(way, most);
    double share = chance.between(40, 50) / 100.0;
    double frontOff = open / 10.0 / (1 - share);
    double rearOff = StrictMath.toDegrees(StrictMath.atan(share * tangent(frontOff)));
    Bearing rear = Drawn.tenths(line.plus(-rearOff));
    Bearing front = Drawn.tenths(rear.plus(-open / 10.0));
    int distance = 10 * chance.between(60, 160);
    int light = chance.below(lights(MarkKind.LEADING_FRONT).size());
    return List.of(
        mark(MarkKind.LEADING_FRONT, front, distance, line, light),
        mark(MarkKind.LEADING_REAR, rear, tens(distance / share), line, light));
  }

  /** How far left of the rear mark the front one is seen, in tenths of a degree. */
  private int open(Steering way, int most) {
    if (way == Steering.ON_THE_LINE) {
      return chance.between(-1, 1);
    }
    int open = chance.between(12, most);
    return (way == Steering.STEER_PORT) == astern ? -open : open;
  }

  private static double tangent(double degrees) {
    return StrictMath.tan(StrictMath.toRadians(degrees));
  }

  private static double tens(double metres) {
    return 10.0 * Math.round(metres / 10);
  }

  /** Unlit by day; at night the rear light goes with the front one. */
  private SightedMark mark(
      MarkKind kind, Bearing bearing, double distance, Bearing line, int which) {
    boolean lit = task.time() == TimeOfDay.NIGHT;
    @Nullable LightCharacter light = lit ? lights(kind).get(which % lights(kind).size()) : null;
    Appearance seen = chance.pick(look(kind).appearances(light));
    return new SightedMark(kind, bearing, distance, null, seen, line);
  }

  private List<LightCharacter> lights(MarkKind kind) {
    return look(kind).lights();
  }

  private MarkLook look(MarkKind kind) {
    return MarkingRules.look(task.practice(), kind);
  }
}
