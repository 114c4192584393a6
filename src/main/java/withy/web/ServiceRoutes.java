package withy.web;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;

/** What whoever runs the machine asks: whether it serves, what it measured, how scripts call it. */
public final class ServiceRoutes implements RouteGroup {
  private final Health health;
  private final Metrics metrics;

  public ServiceRoutes(Health health, Metrics metrics) {
    this.health = health;
    this.metrics = metrics;
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/health", Role.ANYONE, this::health),
        Route.get("/metrics", Role.ANYONE, this::metrics),
        Route.get("/api/openapi.yaml", Role.ANYONE, ServiceRoutes::openApi));
  }

  private void health(Visit visit) {
    if (!health.isGood()) {
      throw Declined.until(Fault.UNAVAILABLE, java.time.Duration.ofSeconds(2));
    }
    visit.context().contentType("text/plain; charset=utf-8").result("good\n");
  }

  private void metrics(Visit visit) {
    requireLoopback(visit);
    visit.context().contentType(Metrics.MEDIA_TYPE).result(metrics.scrape());
  }

  private static void openApi(Visit visit) throws IOException {
    try (InputStream in = ServiceRoutes.class.getResourceAsStream("/openapi.yaml")) {
      if (in == null) {
        throw Declined.of(Fault.NOT_FOUND);
      }
      visit.context().contentType("application/yaml; charset=utf-8").result(in.readAllBytes());
    }
  }

  /** Hides a route from every machine but this one, whichever of its addresses it calls by. */
  public static void requireLoopback(Visit visit) {
    String from = visit.address();
    if (!isLoopback(from) && !from.equals(visit.context().req().getLocalAddr())) {
      throw Declined.of(Fault.NOT_FOUND);
    }
  }

  static boolean isLoopback(String address) {
    try {
      return InetAddress.getByName(address).isLoopbackAddress();
    } catch (UnknownHostException unknown) {
      return false;
    }
  }
}
