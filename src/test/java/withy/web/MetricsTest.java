package withy.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MetricsTest {
  @Test
  void tellHowLongRoutesTakeAndNobodysName() throws Exception {
    Server server = ProbeServer.start();
    try {
      Browser browser = new Browser(server.port());
      browser.get("/page?who=somebody");
      HttpResponse<String> metrics = browser.get("/metrics");
      assertThat(metrics.headers().firstValue("Content-Type"))
          .hasValue("text/plain; version=0.0.4; charset=utf-8");
      assertThat(metrics.body())
          .contains(
              "http_server_requests_seconds_count{method=\"GET\",route=\"/page\",status=\"200\"} 1")
          .doesNotContain("somebody");
    } finally {
      server.stop();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "127.0.0.1, true",
    "127.8.9.1, true",
    "0:0:0:0:0:0:0:1, true",
    "192.0.2.7, false",
    "10.0.0.1, false",
  })
  void areForThisMachineAlone(String address, boolean loopback) {
    assertThat(ServiceRoutes.isLoopback(address)).isEqualTo(loopback);
  }
}
