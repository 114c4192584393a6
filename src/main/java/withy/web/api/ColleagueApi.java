package withy.web.api;

import java.util.List;
import withy.usecase.InstructorAccount;
import withy.usecase.UseCases;
import withy.web.Json;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;

/** The other instructors of a school, and handing a class over to one of them. */
final class ColleagueApi implements RouteGroup {
  private final UseCases useCases;

  ColleagueApi(UseCases useCases) {
    this.useCases = useCases;
  }

  private record ColleagueJson(String id, String name) {
    static ColleagueJson of(InstructorAccount account) {
      return new ColleagueJson(account.id(), account.name());
    }
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/api/colleagues", Role.INSTRUCTOR, this::list),
        Route.post("/api/classes/{id}/hand-over", Role.INSTRUCTOR, this::handOver));
  }

  private void list(Visit visit) {
    List<InstructorAccount> others = useCases.handOverClass().colleagues(visit.instructor());
    Json.answer(visit.context(), 200, others.stream().map(ColleagueJson::of).toList());
  }

  private void handOver(Visit visit) {
    String id = useCases.openClass().of(visit.instructor(), visit.context().pathParam("id")).id();
    Body body = Body.of(visit.context());
    String colleague = body.text("colleague");
    body.requireNothingElse();
    useCases.handOverClass().handOver(visit.instructor(), id, colleague);
    visit.context().status(204);
  }
}
