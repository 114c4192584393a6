package withy.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.util.JavalinBindException;
import java.net.BindException;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.eclipse.jetty.server.handler.SizeLimitHandler;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import withy.wording.Wording;

/**
 * The HTTP server. It serves the routes of one table and nothing else, and it never interrupts a
 * request: an interrupted thread may close the files of the database.
 */
public final class Server {
  /** The largest body of a request, bytes. */
  public static final int LARGEST_BODY = 64 * 1024;

  /** The largest body with the file of a water, bytes: the file and the form round it. */
  public static final int LARGEST_FILE = 1024 * 1024 + 64 * 1024;

  /** One line a request, unless the log is told otherwise not at all. */
  private static final Logger REQUESTS = LoggerFactory.getLogger("withy.requests");

  private static final int LARGEST_HEADERS = 8 * 1024;
  private static final int THREADS = 64;
  private static final Duration FINISH_WITHIN = Duration.ofSeconds(15);

  private final Javalin javalin;
  private final Health health;

  private Server(Javalin javalin, Health health) {
    this.javalin = javalin;
    this.health = health;
  }

  /**
   * What the server is made of.
   *
   * @param sessions finds who calls
   * @param health tells whether it can serve
   * @param metrics notes how long calls take
   * @param errors shows problems to people
   */
  public record Parts(
      List<Route> routes,
      SessionFinder sessions,
      Clock clock,
      Health health,
      Metrics metrics,
      ErrorPage errors) {
    public Parts {
      routes = List.copyOf(routes);
    }
  }

  /**
   * Starts listening.
   *
   * @param port 0 for any that is free
   * @throws BindException if the address cannot be had, most often because it is in use
   */
  public static Server start(String host, int port, Parts parts) throws BindException {
    Javalin javalin = Javalin.create(config -> configure(config, parts));
    try {
      javalin.start(host, port);
    } catch (JavalinBindException inUse) {
      BindException refused = new BindException(host + ":" + port);
      refused.initCause(inUse);
      throw refused;
    }
    return new Server(javalin, parts.health());
  }

  /**
   * Makes ready what serving needs, while the caller waits for something else: starts a server that
   * serves nothing, where only this machine finds it, and stops it.
   */
  public static void warmUp() {
    Parts nothing =
        new Parts(
            List.of(),
            token -> Optional.empty(),
            Clock.systemUTC(),
            new Health(() -> false),
            new Metrics(),
            problem -> "");
    try {
      start("127.0.0.1", 0, nothing).stop();
    } catch (BindException unlikely) {
      // the real start will say what is wrong
    }
  }

  /** The port that it listens on. */
  public int port() {
    return javalin.port();
  }

  /** Takes no more requests, finishes those it has, and stops. */
  public void stop() {
    health.close();
    javalin.stop();
  }

  private static void configure(JavalinConfig config, Parts parts) {
    Wording words = Wording.of(Locale.ENGLISH);
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.http.maxRequestSize = LARGEST_FILE;
    config.http.prefer405over404 = true;
    config.http.defaultContentType = "text/plain; charset=utf-8";
    config.jetty.multipartConfig.maxFileSize(LARGEST_FILE, SizeUnit.BYTES);
    config.jetty.multipartConfig.maxTotalRequestSize(LARGEST_FILE, SizeUnit.BYTES);
    config.jetty.multipartConfig.maxInMemoryFileSize(LARGEST_FILE, SizeUnit.BYTES);
    config.jetty.modifyServletContextHandler(
        handler -> handler.setMaxFormContentSize(LARGEST_FILE));
    config.jetty.threadPool = threads();
    config.jetty.modifyHttpConfiguration(Server::configureHttp);
    config.jetty.modifyServer(server -> configureServer(server, words));
    register(config, parts, new ErrorAnswers(words, parts.errors()));
  }

  private static void register(JavalinConfig config, Parts parts, ErrorAnswers errors) {
    Gate gate = new Gate(parts.sessions(), parts.clock());
    for (Route each : parts.routes()) {
      config.routes.addHttpHandler(each.method(), each.path(), gate.guarded(each));
    }
    errors.register(config.routes);
    config.requestLogger.http((context, millis) -> note(parts.metrics(), context, millis));
    config.router.javaLangErrorHandler(
        (response, error) -> {
          throw new IllegalStateException(error); // for JettyErrors to answer
        });
  }

  /** Routes are noted as they stand in the table: without ids, queries and who called. */
  private static void note(Metrics metrics, Context context, float millis) {
    Route route = context.attribute(Gate.ROUTE);
    if (route != null) {
      metrics.took(route, context.statusCode(), Duration.ofNanos((long) (millis * 1_000_000)));
      REQUESTS.debug(
          "{} {} {} {} ms", route.method(), route.path(), context.statusCode(), (long) millis);
    }
  }

  private static QueuedThreadPool threads() {
    QueuedThreadPool pool = new QueuedThreadPool(THREADS, 8);
    pool.setName("web");
    pool.setStopTimeout(2 * FINISH_WITHIN.toMillis());
    return pool;
  }

  private static void configureHttp(HttpConfiguration http) {
    http.setSendServerVersion(false);
    http.setRequestHeaderSize(LARGEST_HEADERS);
    http.addCustomizer(new SecurityHeaders());
  }

  private static void configureServer(org.eclipse.jetty.server.Server server, Wording words) {
    server.setStopTimeout(FINISH_WITHIN.toMillis());
    server.setErrorHandler(new JettyErrors(words));
    server.insertHandler(new BodyLimit(LARGEST_BODY));
    server.insertHandler(new SizeLimitHandler(LARGEST_FILE, -1));
    server.insertHandler(new GracefulHandler());
  }
}
