package withy.web.api;

import io.javalin.http.HandlerType;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import withy.usecase.Caller;
import withy.usecase.InstructorAccount;
import withy.usecase.InstructorCaller;
import withy.usecase.JoinClass;
import withy.usecase.Session;
import withy.usecase.UseCases;
import withy.web.Json;
import withy.web.Limits;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;

/** How instructors and learners come in and go. */
final class EntryApi implements RouteGroup {
  private final UseCases useCases;
  private final Limits limits;

  EntryApi(UseCases useCases, Limits limits) {
    this.useCases = useCases;
    this.limits = limits;
  }

  private record SessionJson(String token, String role, String name) {
    static SessionJson of(Session session) {
      Caller caller = session.caller();
      String role = caller instanceof InstructorCaller ? "instructor" : "learner";
      return new SessionJson(session.requestToken(), role, caller.name());
    }
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.post("/api/instructors", Role.ANYONE, this::setUp),
        Route.post("/api/sign-in", Role.ANYONE, this::signIn),
        Route.get("/api/session", Role.SIGNED_IN, EntryApi::session),
        new Route(HandlerType.DELETE, "/api/session", Role.SIGNED_IN, this::signOut),
        Route.post("/api/join", Role.ANYONE, this::join));
  }

  /** The first instructor proves it with the set-up code, every other with an invitation. */
  private void setUp(Visit visit) {
    Body body = Body.of(visit.context());
    boolean invited = body.has("invitation");
    String code = body.text(invited ? "invitation" : "setUpCode");
    String name = body.text("name");
    String password = body.text("password");
    body.requireNothingElse();
    InstructorAccount account =
        limits.signIn(
            visit,
            () ->
                invited
                    ? useCases.inviteColleague().join(code, name, password)
                    : useCases.setUp().setUp(code, name, password));
    Json.answer(visit.context(), 201, Map.of("id", account.id()));
  }

  private void signIn(Visit visit) {
    Body body = Body.of(visit.context());
    String name = body.text("name");
    String password = body.text("password");
    body.requireNothingElse();
    begin(visit, limits.signIn(visit, () -> useCases.signIn().signIn(name, password)), 200);
  }

  private void begin(Visit visit, Session session, int status) {
    visit.begin(useCases.signIn(), session);
    Json.answer(visit.context(), status, SessionJson.of(session));
  }

  private static void session(Visit visit) {
    Session session = Objects.requireNonNull(visit.session());
    Json.answer(visit.context(), 200, SessionJson.of(session));
  }

  private void signOut(Visit visit) {
    useCases.signIn().signOut(Objects.requireNonNull(visit.session()).token());
    visit.end();
    visit.context().status(204);
  }

  private void join(Visit visit) {
    Body body = Body.of(visit.context());
    if (body.has("returnCode")) {
      String code = body.text("returnCode");
      body.requireNothingElse();
      comeBack(visit, limits.join(visit, () -> useCases.joinClass().comeBack(code)));
      return;
    }
    String code = body.text("code");
    String nickname = body.text("nickname");
    body.requireNothingElse();
    joined(visit, limits.join(visit, () -> useCases.joinClass().join(code, nickname)));
  }

  private void joined(Visit visit, JoinClass.Joined joined) {
    begin(visit, joined.session(), 201);
    Json.answer(
        visit.context(),
        201,
        Map.of("learner", joined.learner().id(), "returnCode", joined.returnCode()));
  }

  private void comeBack(Visit visit, Session session) {
    begin(visit, session, 200);
    Json.answer(visit.context(), 200, Map.of("learner", session.caller().id()));
  }
}
