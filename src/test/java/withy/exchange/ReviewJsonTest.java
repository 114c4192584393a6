package withy.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.fixture.Answer.by;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import withy.core.measurement.Review;
import withy.core.response.Response;
import withy.fixture.Answer;

class ReviewJsonTest {
  private final List<Response> responses = new ArrayList<>();

  @Test
  void keepsTheFieldsThatScriptsHoldOnTo() throws IOException {
    for (String learner : List.of("Ada", "Bo", "Cy")) {
      responses.add(identify(learner, "q1").wrong());
      responses.add(identify(learner, "q2").wrong());
    }
    JsonNode review = written();
    assertThat(fields(review)).containsExactly("concepts", "learners", "confusions", "items");
    assertThat(fields(review.at("/concepts/0")))
        .startsWith(
            "concept",
            "learners",
            "answers",
            "errorRate",
            "effectiveAnswers",
            "lower",
            "upper",
            "aboveTolerance",
            "verdict")
        .contains("wide", "belief");
    assertThat(fields(review.at("/learners/0")))
        .containsExactly("learner", "concept", "answers", "knows", "misconceptions", "guesses");
    assertThat(fields(review.at("/confusions/0")))
        .containsExactly(
            "shown", "answered", "learners", "times", "offered", "adjustedP", "listed");
    assertThat(fields(review.at("/items/0")))
        .containsExactly("form", "answers", "facility", "discrimination");
    assertThat(review.at("/concepts/0/belief/misconception").asText()).isEqualTo("cones-swapped");
    assertThat(review.at("/concepts/0/belief/learners").asInt()).isEqualTo(3);
    assertThat(review.at("/items/0/discrimination").isNull()).isTrue();
  }

  @Test
  void writesNumbersInFull() throws IOException {
    responses.add(identify("Ada", "q1").wrong());
    responses.add(identify("Ada", "q2").right());
    responses.add(identify("Ada", "q3").right());
    Review review = Review.of(responses);
    assertThat(written().at("/concepts/0/errorRate").asDouble()).isEqualTo(1.0 / 3);
    assertThat(written().at("/learners/0/knows").asDouble())
        .isEqualTo(review.learners().get(0).knows());
  }

  @Test
  void keepsEmptyListsWhereThereIsNothing() {
    assertThat(ReviewJson.write(Review.of(List.of())))
        .isEqualTo("{\"concepts\":[],\"learners\":[],\"confusions\":[],\"items\":[]}");
  }

  private static Answer identify(String learner, String item) {
    return by(learner)
        .to(item)
        .form("identify")
        .on("cardinal-identity")
        .offered("east-cardinal", "west-cardinal=cones-swapped");
  }

  private JsonNode written() throws IOException {
    return new ObjectMapper().readTree(ReviewJson.write(Review.of(responses)));
  }

  private static List<String> fields(JsonNode node) {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }
}
