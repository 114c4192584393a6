package withy.web.pages.waters;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.mark.Practice;
import withy.core.scenario.TimeOfDay;
import withy.usecase.ImportWater;
import withy.usecase.ListWaters.Listed;
import withy.usecase.Refused;
import withy.usecase.UnfitWater;
import withy.usecase.UseCases;
import withy.usecase.WaterProblem;
import withy.web.Declined;
import withy.web.Download;
import withy.web.Fault;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.Form;
import withy.web.pages.PageRenderer;
import withy.web.pages.SentText;

/** The pages on which an instructor sees, imports and deletes waters. */
public final class WaterPages implements RouteGroup {
  private static final String LIST = "waters/waters";
  private static final String GEO_JSON = "application/geo+json";

  private final PageRenderer pages;
  private final UseCases useCases;
  private final WaterViews views;

  public WaterPages(PageRenderer pages, UseCases useCases) {
    this.pages = pages;
    this.useCases = useCases;
    this.views = new WaterViews(pages, useCases.composeDrill());
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/waters", Role.INSTRUCTOR, this::list),
        Route.post("/waters", Role.INSTRUCTOR, this::take),
        Route.get("/water-files", Role.INSTRUCTOR, this::format),
        Route.get("/waters/{id}", Role.INSTRUCTOR, this::show),
        Route.get("/waters/{id}/file", Role.INSTRUCTOR, this::file),
        Route.post("/waters/{id}/delete", Role.INSTRUCTOR, this::delete));
  }

  private void list(Visit visit) {
    String news = visit.context().queryParam("deleted") == null ? null : text("page.waters.gone");
    pages.show(visit, LIST, text("page.waters.heading"), view(visit, news, "", "", List.of()));
  }

  private WatersView view(
      Visit visit, @Nullable String news, String title, String text, List<WaterProblem> problems) {
    List<Listed> all = useCases.listWaters().all(visit.instructor());
    return views.list(all, news, title, text, problems);
  }

  private void take(Visit visit) {
    Form form = Form.of(visit);
    String title = form.text("title");
    String sent = "";
    try {
      sent = SentText.of(visit, form);
      take(visit, form, title, sent);
    } catch (UnfitWater unfit) {
      form.refuse("file", text("page.waters.unfit", unfit.problems().size()));
      refuse(visit, form, title, sent, unfit.problems());
    }
  }

  private void take(Visit visit, Form form, String title, String sent) throws UnfitWater {
    if (sent.isBlank()) {
      form.refuse("file", text("page.waters.no-file"));
      refuse(visit, form, title, sent, List.of());
      return;
    }
    try {
      ImportWater.Imported taken = useCases.importWater().take(visit.instructor(), title, sent);
      visit.goTo("/waters/" + taken.water().id() + "?imported=yes");
    } catch (Refused refused) {
      refuse(form, refused);
      refuse(visit, form, title, sent, List.of());
    }
  }

  private void refuse(Form form, Refused refused) {
    switch (refused.reason()) {
      case NAME_UNFIT -> form.refuse("title", text("page.waters.title-unfit"));
      case TOO_MANY_WATERS -> form.refuse("file", text("page.waters.too-many", ImportWater.MOST));
      default -> throw refused;
    }
  }

  private void refuse(
      Visit visit, Form form, String title, String sent, List<WaterProblem> problems) {
    WatersView view = view(visit, null, title, sent, problems);
    pages.showAgain(visit, LIST, text("page.waters.heading"), view, form.problems());
  }

  private void format(Visit visit) {
    String title = text("page.water-files.heading");
    pages.show(visit, "waters/format", title, new FormatView(useCases.listWaters().example()));
  }

  private void show(Visit visit) {
    Listed listed = listed(visit);
    boolean imported = visit.context().queryParam("imported") != null;
    WaterView view =
        views.one(
            listed,
            practice(visit),
            time(visit.context().queryParam("time")),
            imported ? text("page.water.imported") : null,
            useCases.listWaters().remarks(listed));
    pages.show(visit, "waters/water", listed.water().title(), view);
  }

  private Listed listed(Visit visit) {
    return useCases.listWaters().one(visit.instructor(), visit.context().pathParam("id"));
  }

  /** The practice asked for; else that of a class of the instructor's. */
  private Practice practice(Visit visit) {
    String asked = visit.context().queryParam("practice");
    if (asked == null) {
      return useCases.openClass().classes(visit.instructor()).stream()
          .findFirst()
          .map(each -> each.practice())
          .orElse(Practice.IALA_A);
    }
    try {
      return Practice.parse(asked);
    } catch (IllegalArgumentException none) {
      throw Declined.of(Fault.NOT_FOUND);
    }
  }

  private static TimeOfDay time(@Nullable String asked) {
    try {
      return asked == null ? TimeOfDay.DAY : Term.parse(TimeOfDay.class, asked);
    } catch (IllegalArgumentException none) {
      throw Declined.of(Fault.NOT_FOUND);
    }
  }

  private void file(Visit visit) {
    Listed listed = listed(visit);
    Download.as(visit.context(), listed.water().title(), "geojson");
    visit.context().contentType(GEO_JSON).result(listed.text().getBytes(StandardCharsets.UTF_8));
  }

  private void delete(Visit visit) {
    useCases.listWaters().remove(visit.instructor(), visit.context().pathParam("id"));
    visit.goTo("/waters?deleted=yes");
  }

  private String text(String key, Object... arguments) {
    return pages.wording().text(key, arguments);
  }
}
