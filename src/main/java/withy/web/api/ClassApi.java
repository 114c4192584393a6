package withy.web.api;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.mark.Practice;
import withy.core.measurement.WilsonInterval;
import withy.core.response.Response;
import withy.exchange.ResponsesCsv;
import withy.exchange.ReviewJson;
import withy.usecase.Assignment;
import withy.usecase.JudgeReadiness;
import withy.usecase.SchoolClass;
import withy.usecase.UseCases;
import withy.web.Download;
import withy.web.Json;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;

/** What an instructor does with a class. */
final class ClassApi implements RouteGroup {
  private static final String CSV = "text/csv; charset=utf-8; header=present";

  private final UseCases useCases;

  ClassApi(UseCases useCases) {
    this.useCases = useCases;
  }

  private record ClassJson(String id, String name, String practice, String code) {
    static ClassJson of(SchoolClass school) {
      return new ClassJson(school.id(), school.name(), school.practice().id(), school.code());
    }
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/api/classes", Role.INSTRUCTOR, this::classes),
        Route.post("/api/classes", Role.INSTRUCTOR, this::open),
        Route.get("/api/classes/{id}/review", Role.INSTRUCTOR, this::review),
        Route.get("/api/classes/{id}/readiness", Role.INSTRUCTOR, this::readiness),
        Route.get("/api/classes/{id}/responses.csv", Role.INSTRUCTOR, this::responses),
        Route.post("/api/assignments", Role.INSTRUCTOR, this::assign));
  }

  private void classes(Visit visit) {
    List<SchoolClass> own = useCases.openClass().classes(visit.instructor());
    Json.answer(visit.context(), 200, own.stream().map(ClassJson::of).toList());
  }

  private void open(Visit visit) {
    Body body = Body.of(visit.context());
    String name = body.text("name");
    Practice practice = Terms.one(Practice.values(), body, "practice");
    body.requireNothingElse();
    SchoolClass opened = useCases.openClass().open(visit.instructor(), name, practice);
    Json.answer(visit.context(), 201, Map.of("id", opened.id(), "code", opened.code()));
  }

  private void assign(Visit visit) {
    AssignmentBody body =
        AssignmentBody.read(
            Body.of(visit.context()),
            id -> useCases.keepDrillSet().find(visit.instructor(), id).map(each -> each.set()),
            id -> useCases.listWaters().one(visit.instructor(), id).water());
    Assignment assigned =
        useCases
            .assignDrill()
            .assign(
                visit.instructor(),
                body.schoolClass(),
                body.title(),
                body.composition(),
                body.due(),
                body.wanted());
    Json.answer(visit.context(), 201, Map.of("id", assigned.id()));
  }

  private void review(Visit visit) {
    String id = visit.context().pathParam("id");
    String json = ReviewJson.write(useCases.reviewClass().review(visit.instructor(), id)) + "\n";
    visit.context().contentType(Json.MEDIA_TYPE).result(json.getBytes(UTF_8));
  }

  private record VerdictJson(
      String learner,
      String nickname,
      @Nullable String stand,
      int right,
      int answered,
      int tries,
      List<String> gate,
      boolean ready) {
    static VerdictJson of(JudgeReadiness.Verdict verdict) {
      return new VerdictJson(
          verdict.learner(),
          verdict.nickname(),
          verdict.stand() == null ? null : verdict.stand().id(),
          verdict.right(),
          verdict.answered(),
          verdict.tries(),
          verdict.gate().stream().map(Term::id).toList(),
          verdict.isReady());
    }
  }

  private record ReadinessJson(
      List<VerdictJson> learners,
      int ready,
      int judged,
      @Nullable Double lower,
      @Nullable Double upper) {
    static ReadinessJson of(JudgeReadiness.Readiness readiness) {
      WilsonInterval interval = readiness.interval();
      return new ReadinessJson(
          readiness.learners().stream().map(VerdictJson::of).toList(),
          readiness.ready(),
          readiness.judged(),
          interval == null ? null : interval.lower(),
          interval == null ? null : interval.upper());
    }
  }

  private void readiness(Visit visit) {
    String id = visit.context().pathParam("id");
    Json.answer(
        visit.context(),
        200,
        ReadinessJson.of(useCases.judgeReadiness().of(visit.instructor(), id)));
  }

  private void responses(Visit visit) throws IOException {
    String id = visit.context().pathParam("id");
    SchoolClass school = useCases.openClass().of(visit.instructor(), id);
    List<Response> all = useCases.reviewClass().responses(visit.instructor(), id);
    Download.as(visit.context(), "responses " + school.name(), "csv");
    visit.context().contentType(CSV);
    try (Writer out = new OutputStreamWriter(visit.context().outputStream(), UTF_8)) {
      ResponsesCsv.write(all, out);
    }
  }
}
