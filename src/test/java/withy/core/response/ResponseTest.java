package withy.core.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class ResponseTest {
  private String learner = "Ada";
  private String item = "q1";
  private String form = "side";
  private List<String> concepts = List.of("lateral-side", "region");
  private String key = "port";
  private String option = "port";
  private String misconception;
  private List<OfferedOption> offered = offered("port=", "starboard=region-swapped");
  private boolean correct = true;
  private long shownMillis;

  @Test
  void measuresTheFirstOfItsConcepts() {
    assertThat(response().measured()).isEqualTo("lateral-side");
  }

  @Test
  void mayAnswerAnItemWithoutOptions() {
    offered = List.of();
    option = "19.2";
    key = "19.4";
    assertThat(response().correct()).isTrue();
    correct = false;
    misconception = "cable-for-mile";
    assertThat(response().misconception()).isEqualTo("cable-for-mile");
  }

  @Test
  void needsLearnerItemFormConceptAndKey() {
    learner = " ";
    assertFlaw(ResponseFlaw.NO_LEARNER);
    learner = "Ada";
    item = "";
    assertFlaw(ResponseFlaw.NO_ITEM);
    item = "q1";
    form = "";
    assertFlaw(ResponseFlaw.NO_FORM);
    form = "side";
    concepts = List.of();
    assertFlaw(ResponseFlaw.NO_CONCEPT);
    concepts = List.of("lateral side");
    assertFlaw(ResponseFlaw.NO_CONCEPT);
    concepts = List.of("lateral-side");
    key = "";
    assertFlaw(ResponseFlaw.NO_KEY);
  }

  @Test
  void needsAChoiceWithTheKeyInIt() {
    offered = offered("port=");
    assertFlaw(ResponseFlaw.ONE_OPTION);
    offered = offered("port=", "port=region-swapped");
    assertFlaw(ResponseFlaw.OPTION_TWICE);
    offered = offered("starboard=region-swapped", "either-side=");
    assertFlaw(ResponseFlaw.KEY_NOT_OFFERED);
    offered = offered("port=region-swapped", "starboard=");
    assertFlaw(ResponseFlaw.KEY_WITH_MISCONCEPTION);
  }

  @Test
  void isCorrectWhereTheOptionIsTheKeyAndThereOnly() {
    correct = false;
    assertFlaw(ResponseFlaw.WRONG_WITH_KEY);
    correct = true;
    option = "starboard";
    assertFlaw(ResponseFlaw.CORRECT_WITHOUT_KEY);
    option = null;
    assertFlaw(ResponseFlaw.CORRECT_WITHOUT_KEY);
    option = "astern";
    assertFlaw(ResponseFlaw.OPTION_NOT_OFFERED);
  }

  @Test
  void namesTheMisconceptionOfTheOptionGivenAndNoOther() {
    misconception = "region-swapped";
    assertFlaw(ResponseFlaw.MISCONCEPTION_WITHOUT_ERROR);
    option = "starboard";
    correct = false;
    assertThat(response().misconception()).isEqualTo("region-swapped");
    misconception = "direction-ignored";
    assertFlaw(ResponseFlaw.MISCONCEPTION_OF_ANOTHER_OPTION);
    misconception = null;
    assertFlaw(ResponseFlaw.MISCONCEPTION_OF_ANOTHER_OPTION);
    option = null;
    misconception = "region-swapped";
    assertFlaw(ResponseFlaw.MISCONCEPTION_WITHOUT_ERROR);
  }

  @Test
  void takesAWrongOptionWithoutMisconceptionForUnexplained() {
    offered = offered("port=", "starboard=");
    option = "starboard";
    correct = false;
    assertThat(response().misconception()).isNull();
    misconception = "unexplained";
    assertThat(response().misconception()).isEqualTo("unexplained");
  }

  @Test
  void wasShownForSomeTime() {
    shownMillis = -1;
    assertFlaw(ResponseFlaw.NEGATIVE_TIME);
  }

  @Test
  void refusesOptionsThatCannotStandInOneCell() {
    for (String value : List.of("", "a b", "a=b", "a\tb", "a\u2003b")) {
      InvalidResponse refused =
          catchThrowableOfType(InvalidResponse.class, () -> new OfferedOption(value, null));
      assertThat(refused.flaw()).isEqualTo(ResponseFlaw.MALFORMED_OPTION);
    }
  }

  private void assertFlaw(ResponseFlaw flaw) {
    InvalidResponse refused = catchThrowableOfType(InvalidResponse.class, this::response);
    assertThat(refused).as(flaw.name()).isNotNull();
    assertThat(refused.flaw()).isEqualTo(flaw);
  }

  private static List<OfferedOption> offered(String... pairs) {
    return Arrays.stream(pairs)
        .map(pair -> pair.split("=", 2))
        .map(pair -> new OfferedOption(pair[0], pair[1].isEmpty() ? null : pair[1]))
        .toList();
  }

  private Response response() {
    return new Response(
        learner,
        "",
        item,
        form,
        "",
        concepts,
        key,
        option,
        misconception,
        offered,
        correct,
        shownMillis,
        Instant.EPOCH);
  }
}
