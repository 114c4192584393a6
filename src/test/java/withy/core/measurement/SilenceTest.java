package withy.core.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import withy.core.response.OfferedOption;
import withy.core.response.Response;

class SilenceTest {
  private static final List<OfferedOption> SIDES =
      List.of(new OfferedOption("port", null), new OfferedOption("starboard", "region-swapped"));

  private final List<Response> responses = new ArrayList<>();

  private void answers(String learner, String concept, int right, int wrong) {
    for (int i = 0; i < right + wrong; i++) {
      boolean correct = i < right;
      responses.add(
          new Response(
              learner,
              "",
              "item " + responses.size(),
              "side",
              "iala-a",
              List.of(concept),
              "port",
              correct ? "port" : "starboard",
              correct ? null : "region-swapped",
              SIDES,
              correct,
              4_000,
              Instant.EPOCH.plusSeconds(responses.size())));
    }
  }

  private List<Silence> hidden(int classSize) {
    List<LearnerSums> sums = LearnerSums.of(responses);
    return Silence.of(Review.ofSums(sums, sums.size()), sums, classSize);
  }

  @Test
  void manyWhoAreSilentCouldTurnASoundVerdictButNotAgainstTheMany() {
    for (String each : List.of("A", "B", "C", "D", "E", "F")) {
      answers(each, "lateral-side", 8, 0);
    }
    assertThat(hidden(6)).isEmpty();
    assertThat(hidden(7))
        .containsExactly(
            new Silence("lateral-side", 1, Verdict.SOUND, Verdict.SOUND, Verdict.SOUND));
    assertThat(hidden(12))
        .containsExactly(
            new Silence("lateral-side", 6, Verdict.SOUND, Verdict.SOUND, Verdict.WEAK));
    assertThat(hidden(12).get(0).mayChange()).isTrue();
    assertThat(hidden(7).get(0).mayChange()).isFalse();
  }

  @Test
  void aWeakSpotMayBeThatOfTheFewWhoAnswered() {
    for (String each : List.of("A", "B", "C")) {
      answers(each, "lateral-side", 1, 4);
    }
    assertThat(hidden(30))
        .containsExactly(
            new Silence("lateral-side", 27, Verdict.WEAK, Verdict.SOUND, Verdict.WEAK));
  }

  @Test
  void thoseAreSilentOnAConceptWhoAnsweredOnOthers() {
    answers("A", "lateral-side", 4, 0);
    answers("B", "lateral-side", 4, 0);
    answers("C", "safe-water", 4, 0);
    assertThat(hidden(3))
        .extracting(Silence::concept)
        .containsExactly("lateral-side", "safe-water");
    assertThat(hidden(3)).extracting(Silence::silent).containsExactly(1, 2);
    assertThat(hidden(3)).extracting(Silence::verdict).containsOnly(Verdict.TOO_LITTLE);
  }
}
