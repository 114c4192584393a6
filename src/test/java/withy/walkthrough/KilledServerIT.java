package withy.walkthrough;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import withy.core.response.Response;
import withy.exchange.ResponsesCsv;

/** Kills the server again and again in the middle of answers: none that it acknowledged is lost. */
class KilledServerIT {
  private static final int KILLS = 5;
  private static final int CONNECTIONS = 8;

  /** A learner may send 10 answers a second, so that one alone is no load. */
  private static final int LEARNERS_OF_A_CONNECTION = 2;

  /** The server dies after so many more answers, and up to so many on top of them. */
  private static final int FEWEST = 20;

  private static final int MORE = 80;
  private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(60);

  private final Random random = new Random(20260504);
  private final List<List<AnsweringLearner>> learners = new ArrayList<>();

  @TempDir private Path data;

  @Test
  void losesNoAnswerThatItAcknowledged() throws Exception {
    Script instructor;
    String schoolClass;
    ServerProcess server = ServerProcess.on(data);
    try {
      instructor = Script.instructor(server.port(), String.valueOf(server.setUpCode()));
      JsonNode opened = instructor.openClass("Tuesday");
      schoolClass = opened.get("id").textValue();
      String drill = instructor.assign(schoolClass, 200, List.of());
      join(server.port(), opened.get("code").textValue(), drill);
      for (int kill = 0; kill < KILLS; kill++) {
        killWhileAnswering(server);

        server = ServerProcess.on(data);

        instructor = instructor.at(server.port());
        for (AnsweringLearner each : all()) {
          each.findAgain(server.port());
        }
        assertKept(instructor.text("/api/classes/" + schoolClass + "/responses.csv"));
        all().forEach(AnsweringLearner::sendTheLastOnesAgain);
      }
      assertKept(instructor.text("/api/classes/" + schoolClass + "/responses.csv"));
    } finally {
      server.close();
    }
  }

  private void join(int port, String code, String drill) {
    for (int connection = 0; connection < CONNECTIONS; connection++) {
      List<AnsweringLearner> own = new ArrayList<>();
      for (int i = 0; i < LEARNERS_OF_A_CONNECTION; i++) {
        Script script = Script.learner(port, code, "Tern " + connection + "-" + i);
        own.add(new AnsweringLearner(script, drill));
      }
      learners.add(own);
    }
  }

  private int count() {
    return all().stream().mapToInt(AnsweringLearner::count).sum();
  }

  private List<AnsweringLearner> all() {
    return learners.stream().flatMap(List::stream).toList();
  }

  private void killWhileAnswering(ServerProcess server) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(CONNECTIONS);
    List<Future<?>> answering = new ArrayList<>();
    learners.forEach(own -> answering.add(threads.submit(() -> answerInTurn(own))));
    int enough = count() + FEWEST + random.nextInt(MORE);
    for (long begun = System.nanoTime(); count() < enough; TimeUnit.MILLISECONDS.sleep(1)) {
      assertThat(System.nanoTime() - begun).as("answers come in").isLessThan(PATIENCE_NANOS);
    }
    server.close();
    for (Future<?> each : answering) {
      each.get();
    }
    threads.shutdown();
  }

  /** Answers until nobody replies any more. */
  private static void answerInTurn(List<AnsweringLearner> learners) {
    for (int turn = 0; learners.get(turn % learners.size()).answerOne(); turn++) {}
  }

  private Map<String, Boolean> acknowledged() {
    Map<String, Boolean> acknowledged = new LinkedHashMap<>();
    all().forEach(each -> acknowledged.putAll(each.acknowledged()));
    return acknowledged;
  }

  /** Every item that was acknowledged has one response, which says the same of it. */
  private void assertKept(String csv) throws Exception {
    List<Response> kept =
        ResponsesCsv.read(new ByteArrayInputStream(csv.getBytes(StandardCharsets.UTF_8)));
    assertThat(kept).extracting(Response::item).doesNotHaveDuplicates();
    Map<String, Boolean> marks = new LinkedHashMap<>();
    kept.forEach(each -> marks.put(each.item(), each.correct()));
    assertThat(marks).containsAllEntriesOf(acknowledged());
  }
}
