package withy.web.pages.drillsets;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.usecase.DrillSetProblem;
import withy.usecase.ImportWater;
import withy.usecase.KeepDrillSet;
import withy.usecase.KeepDrillSet.Listed;
import withy.usecase.KeptDrillSet;
import withy.usecase.Refused;
import withy.usecase.UnfitDrillSet;
import withy.usecase.UnfitWater;
import withy.usecase.UseCases;
import withy.web.Download;
import withy.web.Json;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.Form;
import withy.web.pages.PageRenderer;
import withy.web.pages.SentText;

/** The pages on which an instructor finds, imports, copies and deletes drill sets. */
public final class DrillSetPages implements RouteGroup {
  private static final String LIST = "drillsets/list";
  private static final String ONE = "drillsets/one";
  private static final List<String> NEWS =
      List.of(
          "page.drill-set.news-kept",
          "page.drill-set.news-imported",
          "page.drill-set.news-copied",
          "page.drill-set.news-renamed",
          "page.drill-set.news-shared",
          "page.drill-set.news-withdrawn");

  private final PageRenderer pages;
  private final UseCases useCases;
  private final DrillSetViews views;

  public DrillSetPages(PageRenderer pages, UseCases useCases) {
    this.pages = pages;
    this.useCases = useCases;
    this.views = new DrillSetViews(pages.wording());
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/drill-sets", Role.INSTRUCTOR, this::list),
        Route.post("/drill-sets", Role.INSTRUCTOR, this::take),
        Route.get("/drill-sets/{id}", Role.INSTRUCTOR, this::show),
        Route.get("/drill-sets/{id}/file", Role.INSTRUCTOR, this::file),
        Route.post("/drill-sets/{id}/title", Role.INSTRUCTOR, this::rename),
        Route.post("/drill-sets/{id}/copy", Role.INSTRUCTOR, this::copy),
        Route.post("/drill-sets/{id}/share", Role.INSTRUCTOR, this::share),
        Route.post("/drill-sets/{id}/delete", Role.INSTRUCTOR, this::delete));
  }

  private void list(Visit visit) {
    String news = visit.context().queryParam("deleted") == null ? null : "page.drill-sets.gone";
    DrillSetsView view = list(visit, news == null ? null : text(news), "", List.of());
    pages.show(visit, LIST, text("page.drill-sets.heading"), view);
  }

  private DrillSetsView list(
      Visit visit, @Nullable String news, String sent, List<DrillSetProblem> problems) {
    List<Listed> all = useCases.keepDrillSet().all(visit.instructor());
    return views.list(all, news, sent, problems);
  }

  private void take(Visit visit) {
    Form form = Form.of(visit);
    String sent = "";
    try {
      sent = SentText.of(visit, form);
      take(visit, form, sent);
    } catch (UnfitDrillSet unfit) {
      refuse(visit, form, sent, unfit.problems());
    } catch (UnfitWater notUtf8) {
      refuse(visit, form, "", notUtf8.problems().stream().map(DrillSetProblem::of).toList());
    }
  }

  private void take(Visit visit, Form form, String sent) throws UnfitDrillSet {
    if (sent.isBlank()) {
      form.refuse("file", text("page.drill-sets.no-file"));
      refuse(visit, form, sent, List.of());
      return;
    }
    try {
      KeptDrillSet taken = useCases.importDrillSet().take(visit.instructor(), sent);
      visit.goTo("/drill-sets/" + taken.id() + "?imported=yes");
    } catch (Refused refused) {
      form.refuse("file", tooMany(refused));
      refuse(visit, form, sent, List.of());
    }
  }

  private String tooMany(Refused refused) {
    return switch (refused.reason()) {
      case TOO_MANY_DRILL_SETS -> text("page.drill-sets.too-many", KeepDrillSet.MOST);
      case TOO_MANY_WATERS -> text("page.waters.too-many", ImportWater.MOST);
      default -> throw refused;
    };
  }

  private void refuse(Visit visit, Form form, String sent, List<DrillSetProblem> problems) {
    if (!problems.isEmpty()) {
      form.refuse("file", text("page.drill-sets.unfit", problems.size()));
    }
    DrillSetsView view = list(visit, null, sent, problems);
    pages.showAgain(visit, LIST, text("page.drill-sets.heading"), view, form.problems());
  }

  private void show(Visit visit) {
    Listed listed = listed(visit);
    pages.show(visit, ONE, listed.set().title(), view(visit, listed, listed.set().title()));
  }

  private Listed listed(Visit visit) {
    return useCases.keepDrillSet().one(visit.instructor(), id(visit));
  }

  private DrillSetView view(Visit visit, Listed listed, String typed) {
    return views.one(listed, typed, useCases.openClass().classes(visit.instructor()), news(visit));
  }

  /** What was just done, as the address says. */
  private @Nullable String news(Visit visit) {
    for (String each : NEWS) {
      if (visit.context().queryParam(each.substring(each.lastIndexOf('-') + 1)) != null) {
        return text(each);
      }
    }
    return null;
  }

  private void file(Visit visit) {
    Listed listed = listed(visit);
    String file = useCases.keepDrillSet().file(visit.instructor(), listed.id());
    Download.as(visit.context(), listed.set().title(), "json");
    visit.context().contentType(Json.MEDIA_TYPE).result(file.getBytes(StandardCharsets.UTF_8));
  }

  private void rename(Visit visit) {
    Form form = Form.of(visit);
    String title = form.text("title");
    try {
      useCases.keepDrillSet().rename(visit.instructor(), id(visit), title);
      visit.goTo("/drill-sets/" + id(visit) + "?renamed=yes");
    } catch (Refused refused) {
      refuse(form, refused);
      showAgain(visit, form, title);
    }
  }

  private void copy(Visit visit) {
    Form form = Form.of(visit);
    try {
      KeptDrillSet copy =
          useCases.keepDrillSet().copy(visit.instructor(), id(visit), form.text("title"));
      visit.goTo("/drill-sets/" + copy.id() + "?copied=yes");
    } catch (Refused refused) {
      refuse(form, refused);
      showAgain(visit, form, form.text("title"));
    }
  }

  private void refuse(Form form, Refused refused) {
    switch (refused.reason()) {
      case NAME_UNFIT -> form.refuse("title", text("page.drill-set.title-unfit"));
      case TOO_MANY_DRILL_SETS ->
          form.refuse("title", text("page.drill-sets.too-many", KeepDrillSet.MOST));
      default -> throw refused;
    }
  }

  private void showAgain(Visit visit, Form form, String typed) {
    Listed listed = listed(visit);
    DrillSetView view = view(visit, listed, typed);
    pages.showAgain(visit, ONE, listed.set().title(), view, form.problems());
  }

  private void share(Visit visit) {
    boolean shared = Form.of(visit).text("shared").equals("yes");
    useCases.keepDrillSet().share(visit.instructor(), id(visit), shared);
    visit.goTo("/drill-sets/" + id(visit) + (shared ? "?shared=yes" : "?withdrawn=yes"));
  }

  private void delete(Visit visit) {
    useCases.keepDrillSet().remove(visit.instructor(), id(visit));
    visit.goTo("/drill-sets?deleted=yes");
  }

  private static String id(Visit visit) {
    return visit.context().pathParam("id");
  }

  private String text(String key, Object... arguments) {
    return pages.wording().text(key, arguments);
  }
}
