package withy.core.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import withy.core.Chance;
import withy.core.Term;

/**
 * The concept to ask about next, and why.
 *
 * <p>Least settled first: among the concepts that were not asked about in the last {@value #GAP}
 * items, the one of which it is least settled whether the learner knows it. So what is clear is
 * left for what is not; every concept comes up in the first round, and neighbours of an item are
 * about something else (interleaving: Brunmair and Richter 2019, g .42, more for what looks alike).
 */
public record NextConcept(String concept, Why why) {
  /** Items between two about the same concept, as far as there are other concepts. */
  public static final int GAP = 2;

  /**
   * Below this nothing is open: it is known by about .98, or by .02 with one belief in its place.
   * What is not known is practised from there on. At .20 that begins sooner: where items teach one
   * in five, simulated learners master .70 to .75 of what they did not know in 30 items, in place
   * of .64 to .69 and of .53 to .54 by chance (three seeds of 1,000). But where they teach nothing,
   * less than .60 of the answers are right, and the recall of weak concepts after 30 items falls by
   * .005 to .009.
   */
  private static final double OPEN = 0.10;

  /** Sums this near are equal but for rounding. */
  private static final double SLACK = 1e-9;

  /** Why a concept is asked about. */
  public enum Why implements Term {
    /** The learner has not been asked about it. */
    NEW,
    /** The answers so far leave open whether the learner knows it. */
    UNSETTLED,
    /** It is not known, and open what is believed instead. */
    BELIEF,
    /** Nothing is left open, and this is not known: it is practised. */
    UNKNOWN,
    /** All is known; it is kept up. */
    KEPT_UP
  }

  /**
   * The choice for a learner.
   *
   * @param standings of every concept of the drill, at least one
   * @param asked the concepts asked about so far, the latest last
   * @param chance among equals
   */
  public static NextConcept leastSettled(
      List<Standing> standings, List<String> asked, Chance chance) {
    List<Standing> free = free(standings, asked);
    List<Standing> open = most(free, Standing::unsettled);
    boolean isOpen = open.get(0).unsettled() >= OPEN;
    return of(chance.pick(isOpen ? open : most(free, each -> 1 - each.state().knows())));
  }

  /** A concept that was chosen where the learner stood so with it: the same reason at any time. */
  public static NextConcept of(Standing chosen) {
    return new NextConcept(chosen.concept(), why(chosen));
  }

  /** Those of which something is most, all where several are equal but for rounding. */
  private static List<Standing> most(List<Standing> standings, ToDoubleFunction<Standing> of) {
    double most = Double.NEGATIVE_INFINITY;
    for (Standing each : standings) {
      most = Math.max(most, of.applyAsDouble(each));
    }
    List<Standing> best = new ArrayList<>();
    for (Standing each : standings) {
      if (of.applyAsDouble(each) >= most - SLACK) {
        best.add(each);
      }
    }
    return best;
  }

  /** Those not asked about lately; with few concepts the gap shrinks to what they allow. */
  private static List<Standing> free(List<Standing> standings, List<String> asked) {
    int gap = Math.min(GAP, standings.size() - 1);
    List<String> lately = asked.subList(Math.max(0, asked.size() - gap), asked.size());
    return standings.stream().filter(each -> !lately.contains(each.concept())).toList();
  }

  private static Why why(Standing chosen) {
    if (chosen.state().answers() == 0) {
      return Why.NEW;
    }
    boolean unknown = chosen.state().knows() < 0.5;
    if (chosen.unsettled() < OPEN) {
      return unknown ? Why.UNKNOWN : Why.KEPT_UP;
    }
    return chosen.knowing() < OPEN && unknown ? Why.BELIEF : Why.UNSETTLED;
  }
}
