package withy.walkthrough;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import withy.catalogue.WaterReader;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.measurement.LearnerState;
import withy.core.measurement.Review;
import withy.core.measurement.Verdict;
import withy.core.scenario.SurveyedWater;

/**
 * A class sails the home water inbound and outbound. Two of the eight swap the regions, two forget
 * that outbound the sides swap; the instructor reads who does what.
 */
class SailedHomeWaterTest {
  private static final SurveyedWater HOME = new WaterReader().authored().get(0).water();

  @Test
  void reviewTellsWhoConfusesWhatInTheHomeWater() {
    Composition sailed =
        new Composition(
            List.of(Concept.LATERAL_SIDE), List.of(Form.SIDE), null, DrilledClass.LENGTH, HOME);
    try (DrilledClass drilled = DrilledClass.of(4, sailed)) {
      Review review = drilled.review();

      assertThat(drilled.responses()).hasSize(8 * DrilledClass.LENGTH);
      assertThat(review.concepts().get(0).concept()).isEqualTo("lateral-side");
      assertThat(review.concepts().get(0).verdict()).isEqualTo(Verdict.WEAK);
      assertThat(review.concepts().get(0).beliefs())
          .extracting(belief -> belief.misconception() + " " + belief.learners())
          .containsExactlyInAnyOrder("region-swapped 2", "direction-ignored 2");
      assertThat(review.learners())
          .filteredOn(LearnerState::needsHelp)
          .extracting(LearnerState::learner)
          .containsExactly("Avocet", "Coot", "Fulmar", "Gannet");
      assertThat(Objects.requireNonNull(sailed.water()).id()).isEqualTo("home-water");
    }
  }
}
