package withy.web.pages.lights;

import java.util.ArrayList;
import java.util.List;
import withy.core.light.LightCharacter;
import withy.core.light.LightNotationException;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.FieldProblem;
import withy.web.pages.PageRenderer;
import withy.wording.LightFaults;

/** The light bench: any character typed is shown as a light, or two side by side. */
public final class LightPages implements RouteGroup {
  private final PageRenderer pages;
  private final BenchViews views;

  public LightPages(PageRenderer pages) {
    this.pages = pages;
    this.views = new BenchViews(pages.wording());
  }

  @Override
  public List<Route> routes() {
    return List.of(Route.get("/lights", Role.ANYONE, this::bench));
  }

  private void bench(Visit visit) {
    Asked asked = Asked.of(visit);
    List<FieldProblem> problems = new ArrayList<>();
    List<LightCharacter> lights = new ArrayList<>();
    read(Asked.FIRST, asked.first(), lights, problems);
    read(Asked.SECOND, asked.second(), lights, problems);
    BenchView view = views.view(asked, lights);
    if (problems.isEmpty()) {
      pages.show(visit, "lights/lights", title(lights), view);
    } else {
      pages.showAgain(visit, "lights/lights", title(lights), view, problems);
    }
  }

  private void read(
      String field, String typed, List<LightCharacter> lights, List<FieldProblem> problems) {
    if (typed.isEmpty()) {
      return;
    }
    try {
      lights.add(LightCharacter.parse(typed));
    } catch (LightNotationException fault) {
      problems.add(new FieldProblem(field, LightFaults.sentence(fault, pages.wording())));
    }
  }

  private String title(List<LightCharacter> lights) {
    if (lights.isEmpty()) {
      return pages.wording().text("page.lights.heading");
    }
    List<String> names = lights.stream().map(LightCharacter::shortNotation).toList();
    return pages.wording().text("page.lights.title", String.join(", ", names));
  }
}
