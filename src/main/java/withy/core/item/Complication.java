package withy.core.item;

import java.util.List;
import java.util.function.Predicate;
import withy.core.geometry.Bearing;
import withy.core.mark.CardinalRules;
import withy.core.mark.MarkKind;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.Situation;
import withy.core.scenario.View;

/**
 * What makes an item harder than another one. Each is told from the item itself; none is labelled
 * by hand. That an item grows harder with the rules to be applied and with options that are alike
 * is common in studies of tests; we name none, since we know them from memory only. In planted
 * classes facility falls by .02 on the average from one difficulty to the next on the same concept,
 * in two of three cases (PlantedDifficultyTest); no answers of people were looked at yet. All
 * limits are ours, no source.
 */
enum Complication {
  /** A silhouette or a light tells less than a mark near by. Our own choice, no source. */
  LITTLE_TO_SEE(item -> situation(item).view() != View.NEAR),
  /**
   * Outbound the sides are to be turned over; a learner who forgets that is still right inbound.
   */
  OUTBOUND(item -> situation(item).travel() == Travel.AGAINST),
  /** A local direction is to be set above the general one. Our own choice, no source. */
  LOCAL_DIRECTION(item -> situation(item).general() != null),
  /** More than one thing must be known, and one be applied to the other. */
  SEVERAL_RULES(item -> item.concepts().size() > 1),
  /**
   * Most beliefs about what it measures go wrong here, so that most who hold one are led astray.
   */
  TEMPTING(Complication::leadsMostAstray),
  /** One who guesses is seldom right: five options or more, or an answer of one's own. */
  HARD_TO_GUESS(item -> item.options().isEmpty() || item.options().size() >= 5),
  /** A wrong option of the key's own family, a cardinal mark beside another. */
  ALIKE(Complication::offersAlike),
  /** Marks in sight that the question is not about. Our own choice, no source. */
  BYSTANDERS(Complication::hasBystanders),
  /** So near to where the rule ends that the angle has to be looked at. Our own choice. */
  NEAR_THE_LIMIT(Complication::isNearLimit);

  private static final List<Form> ASKS_ONE =
      List.of(Form.IDENTIFY, Form.SIDE, Form.CHANNEL_CHOICE, Form.CARDINAL_PASS);

  /** Degrees from the conventional direction beyond which "with" and "against" need a look. */
  private static final double PLAINLY = 40;

  /** Degrees beyond those within which a cardinal mark has no hand. */
  private static final double CLOSE = 15;

  private final Predicate<Item> holds;

  Complication(Predicate<Item> holds) {
    this.holds = holds;
  }

  /** Whether it makes an item harder. */
  boolean holds(Item item) {
    return holds.test(item);
  }

  private static Situation situation(Item item) {
    return item.scenario().situation();
  }

  private static boolean leadsMostAstray(Item item) {
    List<Misconception> beliefs = Misconception.about(item.measures());
    long astray =
        beliefs.stream()
            .filter(each -> item.led(each).filter(word -> !word.equals(item.key())).isPresent())
            .count();
    return 2 * astray > beliefs.size();
  }

  private static boolean offersAlike(Item item) {
    return item.form() == Form.IDENTIFY
        && item.options().stream()
            .filter(each -> !each.value().equals(item.key()))
            .anyMatch(each -> family(each.value()).equals(family(item.key())));
  }

  private static boolean hasBystanders(Item item) {
    return ASKS_ONE.contains(item.form()) && item.scenario().marks().size() > 1;
  }

  /** The last word of a kind: hand, cardinal, port, starboard; most have a family of their own. */
  private static String family(String kind) {
    return kind.substring(kind.lastIndexOf('-') + 1);
  }

  private static boolean isNearLimit(Item item) {
    Scenario scenario = item.scenario();
    Bearing buoyage = scenario.situation().buoyage();
    if (buoyage != null) {
      double off = scenario.situation().heading().angleTo(buoyage);
      return Math.min(off, 180 - off) > PLAINLY;
    }
    return item.form() == Form.SIDE && isNearHand(scenario);
  }

  /** A cardinal mark that the boat on the safe side has nearly ahead or astern. */
  private static boolean isNearHand(Scenario scenario) {
    MarkKind kind = scenario.mark().kind();
    if (!kind.isCardinal()) {
      return false;
    }
    Bearing abeam = kind.quadrant().opposite().middle();
    double off = abeam.angleTo(scenario.situation().heading());
    return Math.min(off, 180 - off) < CardinalRules.NO_HAND_WITHIN + CLOSE;
  }
}
