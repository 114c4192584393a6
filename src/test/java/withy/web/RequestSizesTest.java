package withy.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.net.BindException;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class RequestSizesTest {
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
  void letABodyOfSixtyFourKibibytesPassAndNoByteMore() {
    assertThat(post(ofLength(Server.LARGEST_BODY)).statusCode()).isEqualTo(200);
    requireTooLarge(post(ofLength(Server.LARGEST_BODY + 1)));
  }

  @Test
  void measureABodyWhoseLengthIsNotSaid() {
    assertThat(post(chunked(Server.LARGEST_BODY)).statusCode()).isEqualTo(200);
    requireTooLarge(post(chunked(Server.LARGEST_BODY + 1)));
    requireTooLarge(post(chunked(1_000_000)));
  }

  @Test
  void measureFormsToo() {
    String form = "token=" + "x".repeat(Server.LARGEST_BODY);
    HttpResponse<String> response =
        browser.withCookie("of-learner").with("Accept", "text/html").postForm("/learner", form);
    assertThat(response.statusCode()).isEqualTo(413);
  }

  @Test
  void refuseHeadersAndAddressesThatAreTooLong() {
    assertThat(browser.with("X-Long", "x".repeat(9000)).get("/health").statusCode()).isEqualTo(431);
    assertThat(browser.get("/health?" + "x".repeat(9000)).statusCode()).isEqualTo(414);
  }

  private static void requireTooLarge(HttpResponse<String> response) {
    assertThat(response.statusCode()).isEqualTo(413);
    assertThat(response.body()).contains("urn:problem:withy:too-large");
    SecurityHeadersTest.requireHeaders(response);
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
