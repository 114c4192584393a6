package withy.walkthrough;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import withy.catalogue.WaterReader;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.measurement.LearnerState;
import withy.core.measurement.Review;
import withy.core.measurement.Verdict;

/**
 * A class sails the home water inbound and outbound, one mark at a time and whole passages. Two of
 * the eight swap the regions, two forget that outbound the sides swap; the instructor reads who
 * does what.
 */
class SailedHomeWaterIT {
  private static final SurveyedWater HOME = new WaterReader().authored().get(0).water();
  private static final Composition SAILED =
      new Composition(
          List.of(Concept.LATERAL_SIDE, Concept.PASSAGE),
          List.of(Form.SIDE, Form.PASSAGE),
          null,
          DrilledClass.LENGTH,
          HOME);

  @Test
  void theReviewTellsWhoConfusesWhatInTheHomeWater() {
    try (DrilledClass drilled = DrilledClass.of(21, SAILED)) {
      assertThat(drilled.asked()).hasSize(8 * DrilledClass.LENGTH);
      assertThat(drilled.asked())
          .allSatisfy(each -> assertThat(each.scenario().sailing()).isNotNull())
          .extracting(each -> each.form() + " " + each.scenario().situation().travel())
          .contains("SIDE WITH", "SIDE AGAINST", "PASSAGE WITH", "PASSAGE AGAINST");

      Review review = drilled.review();
      assertThat(PlantedBeliefsIT.verdicts(review))
          .containsExactlyInAnyOrderEntriesOf(
              Map.of("lateral-side", Verdict.WEAK, "passage", Verdict.WEAK));
      assertThat(review.learners())
          .filteredOn(LearnerState::needsHelp)
          .extracting(LearnerState::learner)
          .containsOnly("Avocet", "Coot", "Fulmar", "Gannet");
      assertThat(review.learners())
          .filteredOn(each -> each.namedMisconception() != null)
          .allSatisfy(
              each ->
                  assertThat(each.namedMisconception())
                      .isEqualTo(PlantedBeliefsIT.planted().get(each.learner())));
      assertThat(PlantedBeliefsIT.named(review).keySet())
          .isEqualTo(PlantedBeliefsIT.planted().keySet());
    }
  }
}
