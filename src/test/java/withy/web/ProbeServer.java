package withy.web;

import io.javalin.http.HandlerType;
import java.net.BindException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import withy.usecase.InstructorCaller;
import withy.usecase.LearnerCaller;
import withy.usecase.Session;

/** The true server with a few routes that only show what the server itself does. */
final class ProbeServer {
  static final Map<String, Session> SESSIONS =
      Map.of(
          "of-learner",
          new Session(
              "of-learner", "learner-token", new LearnerCaller("l", "c", "Tern"), Instant.MAX),
          "of-instructor",
          new Session(
              "of-instructor", "instructor-token", new InstructorCaller("i", "Ada"), Instant.MAX));

  private ProbeServer() {}

  static Server start(Route... more) throws BindException {
    Health health = new Health(() -> true);
    Metrics metrics = new Metrics();
    List<Route> routes = new ArrayList<>(List.of(more));
    routes.addAll(new ServiceRoutes(health, metrics).routes());
    routes.addAll(new Assets().routes());
    routes.addAll(probes());
    return Server.start(
        "127.0.0.1",
        0,
        new Server.Parts(
            routes,
            token -> Optional.ofNullable(SESSIONS.get(token)),
            Clock.systemUTC(),
            health,
            metrics,
            problem -> "<!doctype html><title>" + problem.status() + "</title>"));
  }

  static List<Route> probes() {
    return List.of(
        Route.get("/api/open", Role.ANYONE, ProbeServer::say),
        Route.post("/api/open", Role.ANYONE, ProbeServer::say),
        Route.get("/api/learner", Role.LEARNER, ProbeServer::say),
        Route.post("/api/learner", Role.LEARNER, ProbeServer::say),
        Route.get("/api/instructor", Role.INSTRUCTOR, ProbeServer::say),
        Route.post("/api/instructor", Role.INSTRUCTOR, ProbeServer::say),
        new Route(HandlerType.DELETE, "/api/learner", Role.LEARNER, ProbeServer::say),
        Route.get("/page", Role.ANYONE, visit -> visit.context().html("<p>page")),
        Route.get("/learner", Role.LEARNER, visit -> visit.context().html("<p>page")),
        Route.get("/instructor", Role.INSTRUCTOR, visit -> visit.context().html("<p>page")),
        Route.post("/learner", Role.LEARNER, visit -> visit.goTo("/page")),
        Route.get("/api/broken", Role.ANYONE, ProbeServer::breakDown),
        Route.get("/broken", Role.ANYONE, ProbeServer::breakDown),
        Route.get(
            "/api/overflow",
            Role.ANYONE,
            visit -> {
              throw new StackOverflowError("secret of the house");
            }),
        Route.post("/api/body", Role.ANYONE, visit -> say(visit, visit.context().body())));
  }

  private static void say(Visit visit) {
    say(visit, "done");
  }

  private static void say(Visit visit, String text) {
    visit.context().contentType("text/plain; charset=utf-8").result(text);
  }

  private static void breakDown(Visit visit) {
    throw new IllegalStateException("secret of the house");
  }
}
