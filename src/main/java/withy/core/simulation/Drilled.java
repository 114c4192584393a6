package withy.core.simulation;

import java.util.ArrayList;
import java.util.List;
import withy.core.Chance;
import withy.core.drill.NextConcept;
import withy.core.drill.Standing;
import withy.core.drill.TellingItem;
import withy.core.item.Form;
import withy.core.measurement.ConceptSums;
import withy.core.measurement.LearnerModel;
import withy.core.measurement.LearnerState;
import withy.core.measurement.LearnerSums;
import withy.core.response.Response;

/** A drill of one planted learner while it goes on. */
final class Drilled {
  private final List<Pool> pools;
  private final List<LearnerModel> models;
  private final List<PlantedState> planted;
  private final Chance chance;
  private final List<String> asked = new ArrayList<>();
  private LearnerSums sums;

  /**
   * @param models of each pool's concept
   * @param planted of each pool's concept
   */
  Drilled(
      String learner,
      List<Pool> pools,
      List<LearnerModel> models,
      List<PlantedState> planted,
      Chance chance) {
    this.pools = pools;
    this.models = models;
    this.planted = new ArrayList<>(planted);
    this.chance = chance;
    this.sums = LearnerSums.none(learner);
  }

  /**
   * Puts the next item.
   *
   * @param length of the whole drill
   * @return whether the answer was right
   */
  boolean next(Policy policy, int length, double learning) {
    int number = asked.size();
    int place = place(policy, number, length);
    Pool pool = pools.get(place);
    Posed posed = policy == Policy.LEAST_SETTLED ? telling(place) : pool.any(chance);
    String given = planted.get(place).answer(posed, chance);
    Response response = posed.answered(sums.learner(), number, given);
    sums = sums.plus(response);
    asked.add(pool.concept().id());
    if (learning > 0 && Population.share(chance) < learning) {
      planted.set(place, planted.get(place).learnt());
    }
    return response.correct();
  }

  private int place(Policy policy, int number, int length) {
    return switch (policy) {
      case FIXED_BLOCKED -> number * pools.size() / length;
      case ROUND_ROBIN -> number % pools.size();
      case RANDOM -> chance.below(pools.size());
      case LEAST_SETTLED -> leastSettled();
    };
  }

  private int leastSettled() {
    List<Standing> standings = new ArrayList<>();
    for (int place = 0; place < pools.size(); place++) {
      standings.add(new Standing(state(place)));
    }
    String concept = NextConcept.leastSettled(standings, asked, chance).concept();
    for (int place = 0; place < pools.size(); place++) {
      if (pools.get(place).concept().id().equals(concept)) {
        return place;
      }
    }
    throw new IllegalStateException(concept);
  }

  private Posed telling(int place) {
    List<Posed> candidates = new ArrayList<>();
    for (int i = 0; i < TellingItem.CANDIDATES; i++) {
      candidates.add(pools.get(place).any(chance));
    }
    if (chance.oneIn(TellingItem.ANY_FORM)) {
      Form form = candidates.get(0).item().form();
      candidates.removeIf(each -> each.item().form() != form);
    }
    return TellingItem.of(state(place), candidates, Posed::offered);
  }

  /** What the statistics hold likely of the learner on the concept of a pool. */
  LearnerState state(int place) {
    String concept = pools.get(place).concept().id();
    ConceptSums known = sums.concepts().get(concept);
    LearnerModel model = models.get(place);
    return model.after(sums.learner(), concept, known == null ? model.noAnswers() : known.shown());
  }

  PlantedState planted(int place) {
    return planted.get(place);
  }

  LearnerSums sums() {
    return sums;
  }
}
