package withy.web.api;

import io.javalin.http.HandlerType;
import java.util.List;
import java.util.Map;
import withy.usecase.Invitation;
import withy.usecase.InviteColleague.Invited;
import withy.usecase.UseCases;
import withy.web.Json;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;

/** How instructors invite colleagues. */
final class InvitationApi implements RouteGroup {
  private final UseCases useCases;

  InvitationApi(UseCases useCases) {
    this.useCases = useCases;
  }

  private record InvitationJson(String id, String made, String expires) {
    static InvitationJson of(Invitation invitation) {
      return new InvitationJson(
          invitation.id(), invitation.madeAt().toString(), invitation.expiresAt().toString());
    }
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/api/invitations", Role.INSTRUCTOR, this::list),
        Route.post("/api/invitations", Role.INSTRUCTOR, this::invite),
        new Route(HandlerType.DELETE, "/api/invitations/{id}", Role.INSTRUCTOR, this::withdraw));
  }

  private void list(Visit visit) {
    List<Invitation> open = useCases.inviteColleague().open(visit.instructor());
    Json.answer(visit.context(), 200, open.stream().map(InvitationJson::of).toList());
  }

  private void invite(Visit visit) {
    Invited invited = useCases.inviteColleague().invite(visit.instructor());
    String expires = invited.invitation().expiresAt().toString();
    Json.answer(
        visit.context(),
        201,
        Map.of("id", invited.invitation().id(), "code", invited.code(), "expires", expires));
  }

  private void withdraw(Visit visit) {
    useCases.inviteColleague().withdraw(visit.instructor(), visit.context().pathParam("id"));
    visit.context().status(204);
  }
}
