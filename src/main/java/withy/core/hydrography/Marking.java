package withy.core.hydrography;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.geometry.Position;
import withy.core.light.LightCharacter;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkingRules;
import withy.core.mark.Passing;
import withy.core.mark.Practice;
import withy.core.mark.Quadrant;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.Fairway;
import withy.core.waterway.Keel;
import withy.core.waterway.LeadingLine;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/**
 * Marks a water as an authority would: each mark stands where the water asks for one, and its kind
 * is the one of the practice that is passed on the side where the water is.
 */
final class Marking {
  /** Metres that marks keep off the rim of the chart, and off each other. */
  static final double FROM_THE_RIM = 100;

  static final double APART = 120;

  private static final double FROM_A_JUNCTION = 165;

  /** Metres between a cardinal mark and the edge of its danger. */
  private static final double OFF_DANGER = 30;

  private final Practice practice;
  private final Waterway water;
  private final Keel keel;
  private final Chance chance;
  private final List<Planned> marks = new ArrayList<>();

  private Marking(Practice practice, Waterway water, Keel keel, Chance chance) {
    this.practice = practice;
    this.water = water;
    this.keel = keel;
    this.chance = chance;
  }

  /**
   * The marks of a water.
   *
   * @param heads of moles, on which marks of the first fairway stand
   */
  static List<PlacedMark> of(
      Practice practice, Waterway water, List<Position> heads, Keel keel, Chance chance) {
    Marking marking = new Marking(practice, water, keel, chance);
    water.leadingLines().forEach(marking::leading);
    JunctionMark.of(marking).ifPresent(marking::isLaid);
    heads.forEach(marking::head);
    for (Fairway each : water.fairways()) {
      new LateralMarks(marking, each, chance).lay();
    }
    water.dangers().forEach(marking::danger);
    water.leadingLines().forEach(any -> marking.safeWater());
    return marking.laid();
  }

  Waterway water() {
    return water;
  }

  Keel keel() {
    return keel;
  }

  /** Numbers, lights and bodies, once every mark has its place. */
  private List<PlacedMark> laid() {
    List<@Nullable LightCharacter> lights = MarkLights.of(marks, chance);
    List<@Nullable String> labels = MarkNumbers.of(practice.region(), marks, water);
    List<PlacedMark> laid = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      laid.add(marks.get(i).laid(labels.get(i), lights.get(i), chance));
    }
    return laid;
  }

  /** Lays a lateral mark if the depths bear it out. */
  boolean lateral(MarkDescription mark, Position place, Fairway fairway) {
    Planned planned = new Planned(mark, place, fairway.id());
    return LateralCheck.isBorneOut(practice, water, planned.unlit(), keel) && isLaid(planned);
  }

  private boolean isLaid(Planned planned) {
    boolean free =
        isCharted(planned.place())
            && marks.stream().allMatch(each -> each.away(planned) >= apart(each));
    return free && marks.add(planned);
  }

  /** A mark at a junction needs more room: nothing else may be taken for it. */
  private static double apart(Planned mark) {
    boolean lateral = mark.mark().kind().isLateral();
    return lateral ? APART : FROM_A_JUNCTION;
  }

  private boolean isCharted(Position place) {
    double least = Math.min(place.x(), place.y());
    double most = Math.max(place.x(), place.y());
    return least > FROM_THE_RIM && most < water.depths().width() - FROM_THE_RIM;
  }

  /** Whether the mark of a fairway that was laid last is on its starboard side. */
  boolean lastIsToStarboard(Fairway fairway) {
    return fairway.line().foot(marks.get(marks.size() - 1).place()).off() > 0;
  }

  /**
   * The mark of a practice that is passed so, the plain one rather than one at a junction.
   *
   * @param fixed whether it stands on the ground
   */
  Optional<MarkDescription> passed(Passing passing, boolean fixed) {
    return practice
        .marks(
            each ->
                each.passing() == passing
                    && each.look().isFixed() == fixed
                    && each.waters() == null)
        .stream()
        .findFirst();
  }

  /** A beacon on the head of a mole. */
  private void head(Position place) {
    Fairway fairway = water.fairways().get(0);
    boolean starboard = fairway.line().foot(place).off() > 0;
    Passing passing = starboard ? Passing.LEAVE_TO_STARBOARD : Passing.LEAVE_TO_PORT;
    passed(passing, true)
        .or(() -> passed(passing, false))
        .ifPresent(mark -> lateral(mark, place, fairway));
  }

  /** A shoal is marked by the sides on which it is passed, if the practice has marks for that. */
  private void danger(Danger danger) {
    if (danger.kind() == DangerKind.BAR) {
      return;
    }
    boolean wide = danger.kind() == DangerKind.SHOAL;
    if (wide && MarkingRules.has(practice, MarkKind.NORTH_CARDINAL)) {
      for (Quadrant each : Quadrant.values()) {
        Position place = danger.at().moved(each.middle(), danger.radius() + OFF_DANGER);
        plan(MarkKind.cardinal(each), place);
      }
    } else {
      plan(MarkKind.ISOLATED_DANGER, danger.at());
    }
  }

  private void plan(MarkKind kind, Position place) {
    practice.mark(kind).ifPresent(mark -> marks.add(new Planned(mark, place, null)));
  }

  /** The two marks ashore. */
  private void leading(LeadingLine line) {
    plan(MarkKind.LEADING_FRONT, line.front());
    plan(MarkKind.LEADING_REAR, line.rear());
  }

  /** Off the coast, the mark from which a fairway is made. */
  private void safeWater() {
    Fairway fairway = water.fairways().get(0);
    double outermost =
        marks.stream()
            .filter(each -> fairway.id().equals(each.serves()))
            .mapToDouble(each -> fairway.line().foot(each.place()).along())
            .min()
            .orElse(0);
    for (double along = outermost - FROM_A_JUNCTION; along > FROM_THE_RIM; along -= 10) {
      Position place = fairway.line().at(along);
      Optional<MarkDescription> mark = practice.mark(MarkKind.SAFE_WATER);
      if (SafeWater.isAllRound(water, keel, place)
          && mark.filter(each -> isLaid(new Planned(each, place, null))).isPresent()) {
        return;
      }
    }
  }
}
