package withy.web;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.BindException;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class RequestSizesTest {
  private static final List<String> JSON = List.of("Content-Type: application/json");

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

  @Test
  void letABodyOfSixtyFourKibibytesPassAndNoByteMore() throws IOException {
    assertThat(post(ofLength(Server.LARGEST_BODY)).statusCode()).isEqualTo(200);
    byte[] more = new byte[Server.LARGEST_BODY + 1];
    requireTooLarge(Wire.post(server.port(), "/api/body", JSON, more));
  }

  @Test
  void measureABodyWhoseLengthIsNotSaid() throws IOException {
    assertThat(post(chunked(Server.LARGEST_BODY)).statusCode()).isEqualTo(200);
    for (int size : new int[] {Server.LARGEST_BODY + 1, 1_000_000}) {
      requireTooLarge(Wire.postChunks(server.port(), "/api/body", JSON, new byte[size]));
    }
  }

  @Test
  void measureFormsToo() throws IOException {
    byte[] form = ("token=" + "x".repeat(Server.LARGEST_BODY)).getBytes(US_ASCII);
    List<String> headers =
        List.of(
            "Accept: text/html",
            "Content-Type: application/x-www-form-urlencoded",
            "Cookie: sid=of-learner");
    assertThat(Wire.post(server.port(), "/learner", headers, form).status()).isEqualTo(413);
  }

  @Test
  void refuseHeadersAndAddressesThatAreTooLong() {
    assertThat(browser.with("X-Long", "x".repeat(9000)).get("/health").statusCode()).isEqualTo(431);
    assertThat(browser.get("/health?" + "x".repeat(9000)).statusCode()).isEqualTo(414);
  }

  private static void requireTooLarge(Wire.Answer answer) {
    assertThat(answer.status()).isEqualTo(413);
    assertThat(answer.body()).contains("urn:problem:withy:too-large");
    SecurityHeadersTest.requireHeaders(answer.headers());
  }

  private static HttpResponse<String> post(BodyPublisher body) {
    return browser.send("POST", "/api/body", "application/json", body);
  }

  private static BodyPublisher ofLength(int bytes) {
    return BodyPublishers.ofByteArray(new byte[bytes]);
  }

  private static BodyPublisher chunked(int bytes) {
    return BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(new byte[bytes]));
  }
}
