package withy.web;

import io.micrometer.core.instrument.Timer;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Duration;

/** What the server measures of itself; no learner, no class, no address is part of it. */
public final class Metrics {
  static final String MEDIA_TYPE = "text/plain; version=0.0.4; charset=utf-8";

  private final PrometheusMeterRegistry registry =
      new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);

  /** Notes how long a call to a route took, by the route as it stands in the table. */
  void took(Route route, int status, Duration time) {
    Timer.builder("http.server.requests")
        .description("Time to answer a call")
        .tag("method", route.method().name())
        .tag("route", route.path())
        .tag("status", Integer.toString(status))
        .publishPercentileHistogram()
        .minimumExpectedValue(Duration.ofMillis(1))
        .maximumExpectedValue(Duration.ofSeconds(5))
        .register(registry)
        .record(time);
  }

  /** Counts one more of something that happened. */
  public void count(String what) {
    registry.counter(what).increment();
  }

  String scrape() {
    return registry.scrape("text/plain; version=0.0.4");
  }
}
