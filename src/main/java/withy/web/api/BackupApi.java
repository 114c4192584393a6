package withy.web.api;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import withy.usecase.BackupOffice;
import withy.web.Declined;
import withy.web.Fault;
import withy.web.Json;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.ServiceRoutes;
import withy.web.Visit;

/**
 * Lets whoever runs this machine, and can read the data folder, copy the database while it is in
 * use.
 */
public final class BackupApi implements RouteGroup {
  private static final String BEARER = "Bearer ";

  private final BackupOffice office;

  public BackupApi(BackupOffice office) {
    this.office = office;
  }

  @Override
  public List<Route> routes() {
    return List.of(Route.post("/admin/backup", Role.ANYONE, this::backUp));
  }

  private void backUp(Visit visit) {
    ServiceRoutes.requireLoopback(visit);
    requireSecret(visit);
    Body body = Body.of(visit.context());
    Path file = file(body);
    body.requireNothingElse();
    Json.answer(visit.context(), 200, Map.of("rows", office.backUp(file)));
  }

  private void requireSecret(Visit visit) {
    String sent = visit.context().header("Authorization");
    boolean bearer = sent != null && sent.startsWith(BEARER);
    if (!bearer || !office.admits(sent.substring(BEARER.length()))) {
      throw Declined.of(Fault.NOT_SIGNED_IN);
    }
  }

  private static Path file(Body body) {
    try {
      Path file = Path.of(body.text("file"));
      return file.isAbsolute() ? file : body.malformed("file");
    } catch (InvalidPathException malformed) {
      return body.malformed("file");
    }
  }
}
