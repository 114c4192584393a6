package withy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import withy.store.RunningServer;

/** Asks a server on this machine for a copy of the database that it has open. */
final class BackupRequest {
  private static final ObjectMapper JSON = JsonMapper.builder().build();
  private static final Duration TO_CONNECT = Duration.ofSeconds(5);
  private static final Duration TO_COPY = Duration.ofMinutes(10);
  private static final int DONE = 200;

  private final RunningServer server;

  private BackupRequest(RunningServer server) {
    this.server = server;
  }

  static BackupRequest to(RunningServer server) {
    return new BackupRequest(server);
  }

  /**
   * Has the copy made.
   *
   * @return why the server made none; empty when it did
   * @throws IOException if the server does not answer
   */
  Optional<String> copyTo(Path file) throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(server.address().resolve("/admin/backup"))
            .timeout(TO_COPY)
            .header("Authorization", "Bearer " + server.token())
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString(JSON.writeValueAsString(Map.of("file", file.toString()))))
            .build();
    HttpClient client = HttpClient.newBuilder().connectTimeout(TO_CONNECT).build();
    HttpResponse<String> response = client.send(request, BodyHandlers.ofString());
    return response.statusCode() == DONE ? Optional.empty() : Optional.of(reason(response));
  }

  /** What a problem document says, or the status where the answer is none. */
  private static String reason(HttpResponse<String> response) {
    String status = Integer.toString(response.statusCode());
    try {
      JsonNode problem = JSON.readTree(response.body());
      return problem.path("detail").asText(problem.path("title").asText(status));
    } catch (IOException noJson) {
      return status;
    }
  }
}
