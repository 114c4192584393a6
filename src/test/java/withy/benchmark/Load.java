package withy.benchmark;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import withy.fixture.AnyAnswer;
import withy.walkthrough.Script;
import withy.walkthrough.ServerProcess;
import withy.web.Browser;

/**
 * How many answers a second the true server stores, each for good before it is acknowledged, and
 * how soon it serves after its start. It needs the jar and a quiet machine.
 */
public final class Load {
  private static final int CONNECTIONS = 8;
  private static final int CLASSES = 5;
  private static final int LEARNERS_OF_A_CLASS = 60;
  private static final int WARMING = 5;
  private static final int ROUNDS = 20;
  private static final int STARTS = 5;

  private final ExecutorService connections = Executors.newFixedThreadPool(CONNECTIONS);
  private final List<Seat> seats = new ArrayList<>();

  private Load() {}

  private record Seat(Script learner, String drill) {}

  public static void main(String[] args) throws Exception {
    Path data = Files.createTempDirectory("withy-load");
    new Load().answers(data);
    List<Duration> starts = new ArrayList<>();
    for (int i = 0; i < STARTS; i++) {
      starts.add(start(data));
    }
    starts.sort(null);
    System.out.println(
        "from start to the first 200 of /health: median "
            + starts.get(STARTS / 2).toMillis()
            + " ms of "
            + starts.stream().map(Duration::toMillis).toList());
  }

  private void answers(Path data) throws Exception {
    try (ServerProcess server = ServerProcess.on(data)) {
      seat(server);
      List<Long> took = new ArrayList<>();
      long all = 0;
      for (int round = 0; round < WARMING + ROUNDS; round++) {
        List<Callable<Long>> answers = new ArrayList<>();
        each(seats.stream().map(seat -> (Callable<Callable<Long>>) () -> answer(seat)).toList())
            .forEach(answers::add);
        long begun = System.nanoTime();
        List<Long> times = each(answers);
        if (round >= WARMING) {
          all += System.nanoTime() - begun;
          took.addAll(times);
        }
      }
      took.sort(null);
      System.out.printf(
          "%d answers on %d connections: %.0f a second, median %.1f ms, 99th percentile %.1f ms%n",
          took.size(),
          CONNECTIONS,
          took.size() / (all / 1e9),
          took.get(took.size() / 2) / 1e6,
          took.get(took.size() * 99 / 100) / 1e6);
    } finally {
      connections.shutdown();
    }
  }

  /** So many learners that none of them answers faster than is allowed. */
  private void seat(ServerProcess server) {
    Script instructor = Script.instructor(server.port(), String.valueOf(server.setUpCode()));
    for (int i = 0; i < CLASSES; i++) {
      JsonNode opened = instructor.openClass("Class " + i);
      String drill = instructor.assign(opened.get("id").textValue(), 200, List.of());
      String code = opened.get("code").textValue();
      IntStream.range(0, LEARNERS_OF_A_CLASS)
          .mapToObj(number -> Script.learner(server.port(), code, "Tern " + number))
          .forEach(learner -> seats.add(new Seat(learner, drill)));
    }
  }

  /** Takes an item, which is not measured; what is left is to answer it. */
  private static Callable<Long> answer(Seat seat) {
    JsonNode item = seat.learner().next(seat.drill());
    if (item == null) {
      throw new IllegalStateException("the drill is too short");
    }
    JsonNode option = AnyAnswer.to(item);
    return () -> {
      long begun = System.nanoTime();
      HttpResponse<String> reply =
          seat.learner().answer(UUID.randomUUID(), item.get("item").textValue(), option);
      if (reply.statusCode() != 201) {
        throw new IllegalStateException(reply.statusCode() + " " + reply.body());
      }
      return System.nanoTime() - begun;
    };
  }

  private <T> List<T> each(List<? extends Callable<T>> calls) throws Exception {
    List<T> results = new ArrayList<>();
    for (Future<T> each : connections.invokeAll(calls)) {
      results.add(each.get());
    }
    return results;
  }

  private static Duration start(Path data) throws IOException {
    long begun = System.nanoTime();
    try (ServerProcess server = ServerProcess.on(data)) {
      int status = new Browser(server.port()).get("/health").statusCode();
      if (status != 200) {
        throw new IllegalStateException("/health says " + status);
      }
      return Duration.ofNanos(System.nanoTime() - begun);
    }
  }
}
