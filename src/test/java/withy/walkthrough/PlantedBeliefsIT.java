package withy.walkthrough;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import withy.CommandLineRun;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.measurement.ConceptError;
import withy.core.measurement.Confusion;
import withy.core.measurement.LearnerState;
import withy.core.measurement.Review;
import withy.core.measurement.Verdict;
import withy.exchange.ResponsesCsv;
import withy.exchange.ReviewJson;

/**
 * An instructor sets the server up, opens a class and assigns a drill of 24 items. Two of the eight
 * who join swap the regions, two forget that outbound the sides swap, four know. The instructor
 * reads what the class gets wrong and who believes what, and has the next drill made from it.
 */
class PlantedBeliefsIT {
  @TempDir private Path folder;

  @Test
  void theReviewNamesWhatIsWrongAndWhoBelievesWhat() {
    try (DrilledClass drilled = DrilledClass.of(1, DrilledClass.DRILLED)) {
      Review review = drilled.review();

      // everybody has answered everything
      assertThat(review.classSize()).isEqualTo(8);
      assertThat(drilled.responses()).hasSize(8 * DrilledClass.LENGTH);

      // the weak concept comes first, and nothing that the class knows is named with it
      assertThat(review.concepts().get(0).concept()).isEqualTo("lateral-side");
      assertThat(verdicts(review))
          .containsExactlyInAnyOrderEntriesOf(
              Map.of(
                  "lateral-side", Verdict.WEAK,
                  "cardinal-identity", Verdict.SOUND,
                  "safe-water", Verdict.SOUND));

      // both beliefs, each of its two learners, nobody else's
      assertThat(named(review)).isEqualTo(planted());
      assertThat(review.concepts().get(0).beliefs())
          .extracting(belief -> belief.misconception() + " " + belief.learners())
          .containsExactlyInAnyOrder("region-swapped 2", "direction-ignored 2");
      assertThat(review.learners())
          .filteredOn(LearnerState::needsHelp)
          .extracting(LearnerState::learner)
          .containsExactly("Avocet", "Coot", "Fulmar", "Gannet");

      // nobody took one mark for another
      assertThat(review.confusions()).noneMatch(Confusion::listed);

      // one press makes the next drill
      Composition next =
          drilled
              .cases()
              .reviewClass()
              .followUp(drilled.instructor(), drilled.id(), Concept.LATERAL_SIDE);
      drilled
          .cases()
          .assignDrill()
          .assign(drilled.instructor(), drilled.id(), "After the review", next, null);
      assertThat(next.concepts()).containsExactly(Concept.LATERAL_SIDE);
      assertThat(drilled.cases().assignDrill().progress(drilled.instructor(), drilled.id()))
          .hasSize(2);
    }
  }

  @Test
  void whoReviewsTheExportedFileReadsTheSame() throws IOException {
    try (DrilledClass drilled = DrilledClass.of(2, DrilledClass.DRILLED)) {
      StringBuilder csv = new StringBuilder();
      ResponsesCsv.write(drilled.responses(), csv);
      Path file = Files.writeString(folder.resolve("responses.csv"), csv);

      assertThat(CommandLineRun.of("review", file.toString()).printed())
          .isEqualTo((ReviewJson.write(drilled.review()) + "\n").getBytes(StandardCharsets.UTF_8));
    }
  }

  /** Chance draws other items, other marks and other headings; what is told stays the same. */
  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14})
  void whateverItemsChanceDraws(long seed) {
    List<Concept> four =
        List.of(
            Concept.LATERAL_SIDE,
            Concept.CARDINAL_IDENTITY,
            Concept.ISOLATED_DANGER,
            Concept.SAFE_WATER);
    try (DrilledClass drilled = DrilledClass.of(seed, four)) {
      Review review = drilled.review();

      assertThat(named(review)).isEqualTo(planted());
      assertThat(verdicts(review))
          .containsEntry("lateral-side", Verdict.WEAK)
          .hasSize(4)
          .values()
          .filteredOn(verdict -> verdict != Verdict.SOUND)
          .hasSize(1);
    }
  }

  static Map<String, Verdict> verdicts(Review review) {
    Map<String, Verdict> verdicts = new LinkedHashMap<>();
    for (ConceptError each : review.concepts()) {
      verdicts.put(each.concept(), each.verdict());
    }
    return verdicts;
  }

  /** What the review names, by learner. */
  static Map<String, String> named(Review review) {
    Map<String, String> named = new LinkedHashMap<>();
    for (LearnerState each : review.learners()) {
      @Nullable String misconception = each.namedMisconception();
      if (misconception != null) {
        named.merge(each.learner(), misconception, (one, other) -> one + " and " + other);
      }
    }
    return named;
  }

  static Map<String, String> planted() {
    Map<String, String> planted = new LinkedHashMap<>();
    DrilledClass.LEARNERS.forEach(
        (nickname, belief) -> {
          if (belief.misconception() != null) {
            planted.put(nickname, belief.misconception());
          }
        });
    return planted;
  }
}
