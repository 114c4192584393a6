package withy.web.api;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.item.Composition;
import withy.core.response.DrillKind;
import withy.usecase.ForeseeDrill.Count;
import withy.usecase.ForeseeDrill.Foreseen;
import withy.usecase.SchoolClass;
import withy.usecase.UseCases;
import withy.web.Json;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;

/** What a class will meet in a drill that is being composed. */
final class PreviewApi implements RouteGroup {
  private final UseCases useCases;

  PreviewApi(UseCases useCases) {
    this.useCases = useCases;
  }

  private record CountJson(String id, double items) {
    static List<CountJson> of(List<? extends Count<? extends Term>> counts) {
      return counts.stream().map(each -> new CountJson(each.what().id(), each.items())).toList();
    }
  }

  private record PreviewJson(
      boolean exact,
      int items,
      String seed,
      List<CountJson> concepts,
      List<CountJson> forms,
      List<CountJson> times,
      List<CountJson> waters,
      List<CountJson> difficulties) {
    static PreviewJson of(Foreseen foreseen, long seed) {
      return new PreviewJson(
          foreseen.exact(),
          foreseen.items(),
          Long.toString(seed),
          CountJson.of(foreseen.concepts()),
          CountJson.of(foreseen.forms()),
          CountJson.of(foreseen.times()),
          CountJson.of(foreseen.places()),
          CountJson.of(foreseen.difficulties()));
    }
  }

  @Override
  public List<Route> routes() {
    return List.of(Route.post("/api/compositions/preview", Role.INSTRUCTOR, this::preview));
  }

  private void preview(Visit visit) {
    Body body = Body.of(visit.context());
    SchoolClass school = useCases.openClass().of(visit.instructor(), body.text("class"));
    DrillKind kind = AssignmentBody.kind(body);
    @Nullable Long given = AssignmentBody.seed(body);
    Composition composition =
        AssignmentBody.composition(
            body, id -> useCases.listWaters().one(visit.instructor(), id).water());
    body.requireNothingElse();
    long seed = given == null ? useCases.foreseeDrill().seed() : given;
    Foreseen foreseen = useCases.foreseeDrill().of(school.practice(), composition, kind, seed);
    Json.answer(visit.context(), 200, PreviewJson.of(foreseen, seed));
  }
}
