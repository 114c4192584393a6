package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.Chance;
import withy.core.drill.TellingItem;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.item.Misconception;
import withy.core.mark.Practice;
import withy.core.measurement.Frequencies;
import withy.core.measurement.LearnerModel;
import withy.core.measurement.LearnerState;
import withy.core.response.Offer;
import withy.core.response.OfferedOption;
import withy.core.response.Response;

/** Twelve items about the side of lateral marks tell which of two beliefs a learner holds. */
class NamedBeliefIT {
  private static final int ITEMS = 12;
  private static final int RUNS = 120;
  private static final Composition SIDES =
      new Composition(List.of(Concept.LATERAL_SIDE), List.of(Form.SIDE), null, ITEMS);
  private static final LearnerModel MODEL =
      LearnerModel.of(
          List.of(Misconception.DIRECTION_IGNORED.id(), Misconception.REGION_SWAPPED.id()));

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void namesTheOneWhoSwapsRegions(Practice practice) {
    assertThat(named(practice, Misconception.REGION_SWAPPED)).isGreaterThanOrEqualTo(0.90);
  }

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void namesTheOneWhoForgetsTheSwapOutbound(Practice practice) {
    assertThat(named(practice, Misconception.DIRECTION_IGNORED)).isGreaterThanOrEqualTo(0.90);
  }

  /** What answers show, by which items are chosen. */
  private static final LearnerModel SHOWN = Frequencies.of(MODEL.misconceptions(), List.of());

  /** The share of runs after which the belief that the learner holds is named. */
  private static double named(Practice practice, Misconception held) {
    int named = 0;
    for (int run = 0; run < RUNS; run++) {
      named += held.id().equals(state(practice, held, run).namedMisconception()) ? 1 : 0;
    }
    return named / (double) RUNS;
  }

  private static LearnerState state(Practice practice, Misconception held, int run) {
    List<Response> answers = new ArrayList<>();
    for (int index = 0; index < ITEMS; index++) {
      LearnerState shown = SHOWN.after("A", Concept.LATERAL_SIDE.id(), answers);
      answers.add(
          answer(TellingItem.of(shown, drawn(practice, run, index), Chance.of(run, index)), held));
    }
    List<Response> named = answers.stream().map(Response::namedAlone).toList();
    return MODEL.after("A", Concept.LATERAL_SIDE.id(), named);
  }

  private static List<Item> drawn(Practice practice, int run, int index) {
    List<Item> drawn = new ArrayList<>();
    for (int draw = 0; draw < 20; draw++) {
      drawn.add(ItemGenerator.item(practice, SIDES, run + 1_000_000L * draw, index));
    }
    return drawn;
  }

  /** Follows the belief wherever it speaks, whatever the option names. */
  private static Response answer(Item item, Misconception held) {
    String chosen = held.answer(item.form(), item.scenario()).orElse(item.key());
    List<OfferedOption> offered = Offer.of(item, null);
    Misconception named = item.option(chosen).misconception();
    return new Response(
        "A",
        "",
        item.seed() + "-" + item.index(),
        item.form().id(),
        item.scenario().practice().id(),
        List.of(item.measures().id()),
        item.key(),
        chosen,
        named == null ? null : named.id(),
        offered,
        chosen.equals(item.key()),
        0,
        Instant.EPOCH);
  }
}
