package withy.web.api;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import withy.usecase.ImportWater;
import withy.usecase.ListWaters;
import withy.usecase.SentFile;
import withy.usecase.UnfitWater;
import withy.usecase.UseCases;
import withy.usecase.WaterProblem;
import withy.web.Declined;
import withy.web.Fault;
import withy.web.Json;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.wording.Wording;

/** The waters of an instructor. */
final class WaterApi implements RouteGroup {
  private static final List<String> TYPES = List.of("application/geo+json", "application/json");

  private final UseCases useCases;
  private final Wording wording;

  WaterApi(UseCases useCases, Wording wording) {
    this.useCases = useCases;
    this.wording = wording;
  }

  private record WaterJson(String id, String title, boolean own, int marks) {
    static WaterJson of(ListWaters.Listed listed) {
      return new WaterJson(
          listed.water().id(),
          listed.water().title(),
          listed.own() != null,
          listed.water().marks().size());
    }
  }

  private record ImportedJson(String id, String title, List<UnfitFile.Place> remarks) {}

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/api/waters", Role.INSTRUCTOR, this::list),
        Route.post("/api/waters", Role.INSTRUCTOR, this::take));
  }

  private void list(Visit visit) {
    List<ListWaters.Listed> all = useCases.listWaters().all(visit.instructor());
    Json.answer(visit.context(), 200, all.stream().map(WaterJson::of).toList());
  }

  /** The body is the file itself. */
  private void take(Visit visit) {
    if (!TYPES.contains(type(visit.context().contentType()))) {
      throw Declined.of(Fault.WRONG_MEDIA_TYPE);
    }
    String title = visit.context().queryParam("title");
    try {
      String text = SentFile.text(visit.context().bodyAsBytes());
      ImportWater.Imported taken = useCases.importWater().take(visit.instructor(), title, text);
      ImportedJson json =
          new ImportedJson(taken.water().id(), taken.water().title(), places(taken.remarks()));
      Json.answer(visit.context(), 201, json);
    } catch (UnfitWater unfit) {
      UnfitFile.answer(visit, Fault.UNFIT_WATER, wording, places(unfit.problems()));
    }
  }

  private static String type(@Nullable String stated) {
    return stated == null ? "" : stated.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
  }

  private List<UnfitFile.Place> places(List<WaterProblem> problems) {
    return problems.stream()
        .map(
            each ->
                new UnfitFile.Place(
                    each.place(),
                    wording.text("water.problem." + each.key(), each.arguments().toArray())))
        .toList();
  }
}
