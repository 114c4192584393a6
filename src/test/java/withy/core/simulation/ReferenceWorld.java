package withy.core.simulation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.drill.NextConcept;
import withy.core.drill.Standing;
import withy.core.measurement.LearnerModel;
import withy.core.measurement.LearnerState;
import withy.core.measurement.StateSums;
import withy.core.response.OfferedOption;
import withy.core.response.Response;

/**
 * Learners planted among the abstract items of the project's reference (section 5): four options,
 * of which one is right, each of two beliefs leads to another, and one is plain.
 *
 * @param concepts how many are drilled
 * @param population of which learners are drawn
 * @param model by which their states are found
 */
record ReferenceWorld(int concepts, Population population, LearnerModel model) {
  static final int ITEMS = 30;

  /** Items of one concept on end where these come one after the other; the last has two. */
  private static final int BLOCK = 4;

  private static final List<OfferedOption> OFFERED =
      List.of(
          new OfferedOption("key", null),
          new OfferedOption("a", "first"),
          new OfferedOption("b", "second"),
          new OfferedOption("c", OfferedOption.UNEXPLAINED));

  /** What the reference takes to be learnt from an item, wherever anything is. */
  private static final double LEARNING = 0.10;

  /** Statistics that hold the usual shares likely, whatever those of the population are. */
  static ReferenceWorld of(int concepts, Population population) {
    List<String> beliefs = List.of("first", "second");
    List<Double> prior = List.of(0.70, 0.12, 0.08, 0.10);
    double learning = population.learning() == 0 ? 0 : LEARNING;
    LearnerModel model = new LearnerModel(beliefs, prior, learning);
    return new ReferenceWorld(concepts, population, model);
  }

  /** What is found after each item of a drill by a policy of the reference. */
  List<Found> drilled(String policy, int learners) {
    List<Found> found = IntStream.range(0, ITEMS).mapToObj(i -> new Found()).toList();
    for (int learner = 0; learner < learners; learner++) {
      new Learner(this, Chance.of(7, learner)).drill(policy, found);
    }
    return found;
  }

  private static final class Learner {
    private final ReferenceWorld world;
    private final Chance chance;
    private final List<PlantedState> begun = new ArrayList<>();
    private final List<PlantedState> planted = new ArrayList<>();
    private final List<StateSums> sums = new ArrayList<>();
    private final List<LearnerState> states = new ArrayList<>();
    private final List<String> asked = new ArrayList<>();

    Learner(ReferenceWorld world, Chance chance) {
      this.world = world;
      this.chance = chance;
      Population of = world.population;
      double slip = Population.between(of.leastSlip(), of.mostSlip(), chance);
      double pull = Population.between(of.leastPull(), of.mostPull(), chance);
      for (int concept = 0; concept < world.concepts; concept++) {
        begun.add(state(Population.share(chance), slip, pull));
        sums.add(world.model.noAnswers());
        states.add(after(concept));
      }
      planted.addAll(begun);
    }

    private PlantedState state(double place, double slip, double pull) {
      Population of = world.population;
      double first = of.knows() + of.first();
      boolean knows = place < of.knows();
      boolean guesses = place >= first + of.second();
      @Nullable String belief = knows || guesses ? null : place < first ? "first" : "second";
      return new PlantedState(knows, belief, slip, pull);
    }

    private LearnerState after(int concept) {
      return world.model.after("learner", String.valueOf(concept), sums.get(concept));
    }

    void drill(String policy, List<Found> found) {
      for (int number = 0; number < ITEMS; number++) {
        int concept = concept(policy, number);
        asked.add(String.valueOf(concept));
        sums.set(concept, sums.get(concept).plus(response(concept, number)));
        states.set(concept, after(concept));
        learn(concept);
        for (int each = 0; each < world.concepts; each++) {
          found.get(number).add(begun.get(each), planted.get(each), states.get(each));
        }
      }
    }

    private void learn(int concept) {
      double learning = world.population.learning();
      if (learning > 0 && Population.share(chance) < learning) {
        planted.set(concept, planted.get(concept).learnt());
      }
    }

    private int concept(String policy, int number) {
      return switch (policy) {
        case "fixed blocked" -> number / BLOCK;
        case "round-robin" -> number % world.concepts;
        case "random" -> chance.below(world.concepts);
        default ->
            Integer.parseInt(
                NextConcept.leastSettled(states.stream().map(Standing::new).toList(), asked, chance)
                    .concept());
      };
    }

    private Response response(int concept, int number) {
      OfferedOption given = given(planted.get(concept));
      return new Response(
          "learner",
          "drill",
          "item-" + number,
          "identify",
          "iala-a",
          List.of(String.valueOf(concept)),
          "key",
          given.value(),
          given.belief(),
          OFFERED,
          given.value().equals("key"),
          8000,
          Instant.EPOCH.plusSeconds(number));
    }

    private OfferedOption given(PlantedState state) {
      if (!state.knows() && state.belief() == null) {
        return chance.pick(OFFERED);
      }
      OfferedOption aim =
          OFFERED.stream()
              .filter(
                  each ->
                      state.knows()
                          ? each.value().equals("key")
                          : each.tempts(String.valueOf(state.belief())))
              .findFirst()
              .orElseThrow();
      boolean firm = Population.share(chance) < (state.knows() ? 1 - state.slip() : state.pull());
      return firm ? aim : chance.pick(OFFERED.stream().filter(each -> each != aim).toList());
    }
  }
}
