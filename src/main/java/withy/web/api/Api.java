package withy.web.api;

import java.util.ArrayList;
import java.util.List;
import withy.usecase.UseCases;
import withy.web.Limits;
import withy.web.Metrics;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.wording.Wording;

/** All that scripts can ask. */
public final class Api implements RouteGroup {
  private final List<RouteGroup> groups;

  public Api(UseCases useCases, Wording wording, Limits limits, Metrics metrics) {
    this.groups =
        List.of(
            new EntryApi(useCases, limits),
            new InvitationApi(useCases),
            new ColleagueApi(useCases),
            new ClassApi(useCases),
            new PreviewApi(useCases),
            new WaterApi(useCases, wording),
            new DrillSetApi(useCases, wording),
            new CourseApi(useCases, wording),
            new DrillApi(useCases, new ItemJson(wording), limits, metrics));
  }

  @Override
  public List<Route> routes() {
    List<Route> all = new ArrayList<>();
    groups.forEach(group -> all.addAll(group.routes()));
    return all;
  }
}
