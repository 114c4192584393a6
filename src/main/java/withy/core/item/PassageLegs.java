package withy.core.item;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.Term;
import withy.core.geometry.Bearing;
import withy.core.geometry.Position;
import withy.core.mark.ChannelIntent;
import withy.core.mark.Side;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;
import withy.core.waterway.PlacedMark;

/**
 * The sides of a passage: for each mark the right one by the rules, and those to which beliefs
 * lead. Where several lead to one side, it names the same belief at every mark, one that was drawn
 * for the whole passage, so that who always errs alike is told one thing.
 */
final class PassageLegs {
  /** Metres before a mark from which it is looked at. */
  private static final double BEFORE = 100;

  /** So many that one is soon drawn again for whoever swaps the regions; ours, no source. */
  private static final int REGION_FIRST_ONE_IN = 8;

  private static final List<Misconception> BELIEFS =
      Stream.of(Misconception.values())
          .filter(each -> each.speaksOf(Form.SIDE) || each.speaksOf(Form.CHANNEL_CHOICE))
          .toList();

  private final Task task;
  private final PassagePlan plan;
  private final List<Misconception> order;
  private final Way way;
  private final List<Passage.Leg> legs = new ArrayList<>();
  private final List<Scenario> scenarios = new ArrayList<>();

  private PassageLegs(Task task, PassagePlan plan, Way way) {
    this.task = task;
    this.plan = plan;
    this.way = way;
    this.order = order(task.chance());
  }

  /**
   * Outbound a forgotten direction and swapped regions lead alike. Who swaps the regions has shown
   * it inbound, and is given items that name it; so of somebody who has not, the direction is the
   * likelier, and comes first but for a few.
   */
  private static List<Misconception> order(Chance chance) {
    List<Misconception> order = chance.shuffled(BELIEFS);
    if (!chance.oneIn(REGION_FIRST_ONE_IN)) {
      order.remove(Misconception.DIRECTION_IGNORED);
      order.add(0, Misconception.DIRECTION_IGNORED);
    }
    return order;
  }

  /** The answer to a passage; empty where rules or water do not tell every side. */
  static Optional<Passage> of(Task task, PassagePlan plan) {
    return plan.way().flatMap(way -> new PassageLegs(task, plan, way).passage());
  }

  private Optional<Passage> passage() {
    for (PlacedMark each : plan.marks()) {
      Scenario scenario = scenario(task, plan.route(), each);
      @Nullable Choice sides = sides(each, scenario);
      if (sides == null) {
        return Optional.empty();
      }
      scenarios.add(scenario);
      legs.add(new Passage.Leg(legs.size(), sides));
    }
    return Optional.of(new Passage(legs, way, beliefs()));
  }

  /** What a boat sees of one mark as she comes up to it. */
  static Scenario scenario(Task task, PassageRoute route, PlacedMark mark) {
    double before = Math.max(0, route.along(mark) - BEFORE);
    Position boat = route.way().line().at(before);
    Bearing heading = Afloat.whole(route.way().line().bearingAt(before));
    boolean fork = mark.kind().isPreferredChannel();
    @Nullable ChannelIntent intent = fork ? route.intent() : null;
    Bearing buoyage = route.travel() == Travel.WITH ? heading : heading.reciprocal();
    Situation situation =
        new Situation(
            heading, route.travel(), buoyage, TimeOfDay.DAY, View.NEAR, intent, null, null);
    SightedMark sighted =
        new SightedMark(
            mark.kind(),
            boat.bearingTo(mark.position()),
            boat.distanceTo(mark.position()),
            mark.label(),
            mark.appearance());
    return new Scenario(task.practice(), situation, List.of(sighted));
  }

  static Form form(PlacedMark mark) {
    return mark.kind().isPreferredChannel() ? Form.CHANNEL_CHOICE : Form.SIDE;
  }

  private @Nullable Choice sides(PlacedMark mark, Scenario scenario) {
    @Nullable Side key = SideBeliefs.side(scenario, plan.route().travel());
    boolean told =
        key == (plan.leavesToStarboard(mark) ? Side.LEAVE_TO_STARBOARD : Side.LEAVE_TO_PORT);
    @Nullable Way astray = told ? plan.wrong(mark).orElse(null) : null;
    Way right = plan.right(mark);
    if (key == null || astray == null || !astray.track().start().equals(right.track().start())) {
      return null;
    }
    List<Option> options = new ArrayList<>();
    options.add(option(key.id(), null, null, right));
    wrong(mark, scenario, key)
        .forEach(
            (side, belief) -> options.add(option(side, belief, belief.mistook(scenario), astray)));
    return options.size() < 2 ? null : inOrder(options, key);
  }

  /** Always in the same order, port first, which tells nothing of the key. */
  private static Choice inOrder(List<Option> options, Side key) {
    return new Choice(
        options.stream()
            .sorted(Comparator.comparing(each -> Term.parse(Side.class, each.value())))
            .toList(),
        key.id());
  }

  private static Option option(
      String side, @Nullable Misconception belief, @Nullable Message mistook, Way way) {
    return new Option(side, Message.of("option.passage." + side), belief, mistook).sailing(way);
  }

  /** The wrong sides, each with the first belief that leads to it. */
  private Map<String, Misconception> wrong(PlacedMark mark, Scenario scenario, Side key) {
    Map<String, Misconception> wrong = new LinkedHashMap<>();
    for (Misconception each : order) {
      @Nullable String side = each.answerOrNull(form(mark), scenario);
      if (side != null && !side.equals(key.id())) {
        wrong.putIfAbsent(side, each);
      }
    }
    return wrong;
  }

  private List<Passage.Belief> beliefs() {
    List<Passage.Belief> beliefs = new ArrayList<>();
    for (Misconception each : order) {
      List<String> sides = new ArrayList<>();
      boolean leads = false;
      for (int i = 0; i < legs.size(); i++) {
        @Nullable String side = each.answerOrNull(form(plan.marks().get(i)), scenarios.get(i));
        String key = legs.get(i).sides().key();
        leads |= side != null && !side.equals(key);
        sides.add(side == null ? key : side);
      }
      if (leads) {
        beliefs.add(new Passage.Belief(sides, each, each.mistook(scenarios.get(0))));
      }
    }
    return beliefs;
  }
}
