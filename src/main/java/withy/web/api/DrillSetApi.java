package withy.web.api;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.javalin.http.HandlerType;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.usecase.DrillSetProblem;
import withy.usecase.KeepDrillSet.Listed;
import withy.usecase.KeptDrillSet;
import withy.usecase.SentFile;
import withy.usecase.UnfitDrillSet;
import withy.usecase.UnfitWater;
import withy.usecase.UseCases;
import withy.web.Declined;
import withy.web.Fault;
import withy.web.Json;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.wording.Wording;

/** The drill sets of an instructor, each the file that pages export and import. */
final class DrillSetApi implements RouteGroup {
  private static final String ONE = "/api/drill-sets/{id}";

  private final UseCases useCases;
  private final Wording wording;

  DrillSetApi(UseCases useCases, Wording wording) {
    this.useCases = useCases;
    this.wording = wording;
  }

  /**
   * A set in the list.
   *
   * @param by the name of the colleague who shares it; null of others
   */
  private record DrillSetJson(
      String id, String title, int length, boolean own, boolean shared, @Nullable String by) {
    static DrillSetJson of(Listed listed) {
      return new DrillSetJson(
          listed.id(),
          listed.set().title(),
          listed.set().composition().length(),
          listed.own(),
          listed.shared(),
          listed.by());
    }
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/api/drill-sets", Role.INSTRUCTOR, this::list),
        Route.post("/api/drill-sets", Role.INSTRUCTOR, this::take),
        Route.get(ONE, Role.INSTRUCTOR, this::file),
        new Route(HandlerType.DELETE, ONE, Role.INSTRUCTOR, this::delete),
        new Route(HandlerType.PUT, ONE + "/title", Role.INSTRUCTOR, this::rename),
        new Route(HandlerType.PUT, ONE + "/shared", Role.INSTRUCTOR, this::share),
        Route.post(ONE + "/copy", Role.INSTRUCTOR, this::copy));
  }

  private void list(Visit visit) {
    List<Listed> all = useCases.keepDrillSet().all(visit.instructor());
    Json.answer(visit.context(), 200, all.stream().map(DrillSetJson::of).toList());
  }

  /** The body is the file itself. */
  private void take(Visit visit) {
    if (!type(visit.context().contentType()).equals("application/json")) {
      throw Declined.of(Fault.WRONG_MEDIA_TYPE);
    }
    try {
      String text = SentFile.text(visit.context().bodyAsBytes());
      KeptDrillSet kept = useCases.importDrillSet().take(visit.instructor(), text);
      Json.answer(visit.context(), 201, Map.of("id", kept.id()));
    } catch (UnfitDrillSet unfit) {
      answer(visit, unfit.problems());
    } catch (UnfitWater notUtf8) {
      answer(visit, notUtf8.problems().stream().map(DrillSetProblem::of).toList());
    }
  }

  private static String type(@Nullable String stated) {
    return stated == null ? "" : stated.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
  }

  private void answer(Visit visit, List<DrillSetProblem> problems) {
    List<UnfitFile.Place> places =
        problems.stream()
            .map(
                each ->
                    new UnfitFile.Place(
                        each.place(), wording.text(each.key(), each.arguments().toArray())))
            .toList();
    UnfitFile.answer(visit, Fault.UNFIT_DRILL_SET, wording, places);
  }

  private void file(Visit visit) {
    String file = useCases.keepDrillSet().file(visit.instructor(), id(visit));
    visit.context().contentType(Json.MEDIA_TYPE).result(file.getBytes(UTF_8));
  }

  private void delete(Visit visit) {
    useCases.keepDrillSet().remove(visit.instructor(), id(visit));
    visit.context().status(204);
  }

  private void rename(Visit visit) {
    useCases.keepDrillSet().rename(visit.instructor(), id(visit), title(visit));
    visit.context().status(204);
  }

  private void copy(Visit visit) {
    KeptDrillSet copy = useCases.keepDrillSet().copy(visit.instructor(), id(visit), title(visit));
    Json.answer(visit.context(), 201, Map.of("id", copy.id()));
  }

  private static String title(Visit visit) {
    Body body = Body.of(visit.context());
    String title = body.text("title");
    body.requireNothingElse();
    return title;
  }

  private void share(Visit visit) {
    Body body = Body.of(visit.context());
    boolean shared = body.truth("shared");
    body.requireNothingElse();
    useCases.keepDrillSet().share(visit.instructor(), id(visit), shared);
    visit.context().status(204);
  }

  private static String id(Visit visit) {
    return visit.context().pathParam("id");
  }
}
