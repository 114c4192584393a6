package withy.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.BindException;
import java.net.http.HttpHeaders;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SecurityHeadersTest {
  private static Server server;
  private static Browser browser;

  @BeforeAll
  static void start() throws BindException {
    server = ProbeServer.start();
    browser = new Browser(server.port());
  }

  @AfterAll
  static void stop() {
    server.stop();
  }

  @ParameterizedTest
  @CsvSource({
    "GET, /health, 200",
    "GET, /metrics, 200",
    "GET, /page, 200",
    "HEAD, /page, 200",
    "GET, /api/open, 200",
    "GET, /api/learner, 401",
    "GET, /learner, 303",
    "GET, /nothing, 404",
    "GET, /api/nothing, 404",
    "GET, /static/0/nothing.css, 404",
    "DELETE, /page, 405",
    "TRACE, /page, 405",
    "OPTIONS, /page, 405",
    "PROPFIND, /page, 405",
    "GET, /broken, 500",
    "GET, /api/broken, 500",
    "GET, /api/overflow, 500",
    "GET, /api/%00, 400",
    "GET, /static/0/..%2f..%2fopenapi.yaml, 404",
  })
  void areOnEveryResponse(String method, String path, int status) {
    HttpResponse<String> response = browser.call(method, path);
    assertThat(response.statusCode()).isEqualTo(status);
    requireHeaders(response);
    assertThat(response.headers().firstValue("Cache-Control")).hasValue("no-store");
  }

  @Test
  void areOnWhatIsRefusedBeforeAnyRoute() throws Exception {
    for (String request :
        List.of(
            "GET / HTTP/1.1\r\n\r\n",
            "NONSENSE\r\n\r\n",
            "GET / HTTP/1.1\r\nHost: a\r\nX: " + "x".repeat(9000) + "\r\n\r\n")) {
      String answer = Wire.raw(server.port(), request.getBytes(StandardCharsets.UTF_8));
      assertThat(answer).startsWith("HTTP/1.1 4");
      for (Map.Entry<String, String> each : SecurityHeaders.ALL) {
        assertThat(answer).contains(each.getKey() + ": " + each.getValue());
      }
      assertThat(answer).contains("application/problem+json").doesNotContain("jetty", "Exception");
    }
  }

  @Test
  void areOnAFileThatBrowsersMayKeep() {
    HttpResponse<String> response = browser.get(new Assets().url("probe.css"));
    assertThat(response.headers().firstValue("Cache-Control"))
        .hasValue("public, max-age=31536000, immutable");
    assertThat(response.headers().firstValue("Content-Type")).hasValue("text/css; charset=utf-8");
    requireHeaders(response);
    HttpResponse<String> old = browser.get("/static/0123/probe.css");
    assertThat(old.headers().firstValue("Cache-Control")).hasValue("no-cache");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/broken", "/api/broken", "/api/overflow"})
  void tellNothingOfWhatBroke(String path) {
    HttpResponse<String> response = browser.get(path);
    assertThat(response.body()).doesNotContain("secret", "Exception", "withy.", "\tat ");
  }

  static void requireHeaders(HttpResponse<String> response) {
    requireHeaders(response.headers());
  }

  static void requireHeaders(HttpHeaders response) {
    Map<String, List<String>> headers = response.map();
    for (Map.Entry<String, String> each : SecurityHeaders.ALL) {
      List<String> values = headers.get(each.getKey().toLowerCase(Locale.ROOT));
      assertThat(values).as(each.getKey()).hasSize(1);
      if (!each.getKey().equals("Cache-Control")) {
        assertThat(values).containsExactly(each.getValue());
      }
    }
    assertThat(headers).doesNotContainKeys("server", "x-powered-by");
    String type = response.firstValue("Content-Type").orElse("");
    if (type.startsWith("text/") || type.contains("json") || type.contains("yaml")) {
      assertThat(type).contains("charset=utf-8");
    }
  }
}
