package withy.walkthrough;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import org.jspecify.annotations.Nullable;
import withy.fixture.AnyAnswer;

/** A learner whose phone sends every answer until the server has acknowledged it. */
final class AnsweringLearner {
  private static final int LAST = 3;

  private record Sent(UUID id, String item, JsonNode option, String feedback) {}

  private final String drill;
  private final List<Sent> acknowledged = new CopyOnWriteArrayList<>();
  private Script script;
  private @Nullable Sent unheard;

  AnsweringLearner(Script script, String drill) {
    this.script = script;
    this.drill = drill;
  }

  /** Whether each item that was acknowledged was answered rightly. */
  Map<String, Boolean> acknowledged() {
    Map<String, Boolean> correct = new LinkedHashMap<>();
    acknowledged.forEach(
        each ->
            correct.put(each.item(), Script.json(each.feedback()).get("correct").booleanValue()));
    return correct;
  }

  int count() {
    return acknowledged.size();
  }

  /** Goes on where the server has another port, with nothing but the cookie. */
  void findAgain(int port) {
    script = script.at(port);
  }

  /**
   * Answers an item, if it is not too soon.
   *
   * @return false once the server is gone
   */
  boolean answerOne() {
    try {
      Sent answer = unheard == null ? take() : unheard;
      unheard = answer;
      HttpResponse<String> reply = script.answer(answer.id(), answer.item(), answer.option());
      if (reply.statusCode() != 429) {
        keep(answer, reply);
      }
      return true;
    } catch (UncheckedIOException gone) {
      return false;
    }
  }

  private Sent take() {
    JsonNode item = script.next(drill);
    if (item == null) {
      throw new IllegalStateException("the drill is too short for this test");
    }
    JsonNode option = AnyAnswer.to(item);
    return new Sent(UUID.randomUUID(), item.get("item").textValue(), option, "");
  }

  private void keep(Sent answer, HttpResponse<String> reply) {
    assertThat(reply.statusCode()).as(reply.body()).isIn(200, 201);
    acknowledged.add(new Sent(answer.id(), answer.item(), answer.option(), reply.body()));
    unheard = null;
  }

  /** As a phone does that did not hear the reply: it is told the same, and nothing is stored. */
  void sendTheLastOnesAgain() {
    int count = acknowledged.size();
    for (Sent each : acknowledged.subList(Math.max(0, count - LAST), count)) {
      HttpResponse<String> reply = script.answer(each.id(), each.item(), each.option());
      assertThat(reply.statusCode()).as(reply.body()).isEqualTo(200);
      assertThat(reply.body()).isEqualTo(each.feedback());
    }
  }
}
