package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.mark.Practice;
import withy.usecase.AssignDrill.Progress;
import withy.usecase.Refused;
import withy.usecase.SchoolClass;
import withy.usecase.UseCases;
import withy.web.LanAddresses;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.Form;
import withy.web.pages.PageRenderer;

/** The pages of an instructor's classes. */
public final class ClassPages implements RouteGroup {
  private static final String LIST = "school/classes";
  private static final String CLASS = "school/class";
  private static final String PRACTICE = "practice";

  private final PageRenderer pages;
  private final UseCases useCases;
  private final ClassViews views;

  public ClassPages(PageRenderer pages, UseCases useCases) {
    this.pages = pages;
    this.useCases = useCases;
    this.views = new ClassViews(pages, useCases.keepDrillSet());
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/classes", Role.INSTRUCTOR, this::list),
        Route.post("/classes", Role.INSTRUCTOR, this::open),
        Route.get("/classes/{id}", Role.INSTRUCTOR, this::show),
        Route.post("/classes/{id}/hand-over", Role.INSTRUCTOR, this::handOver));
  }

  private void list(Visit visit) {
    pages.show(visit, LIST, text("page.classes.heading"), list(visit, "", ""));
  }

  private ClassesView list(Visit visit, String name, String practice) {
    List<SchoolClass> classes = useCases.openClass().classes(visit.instructor());
    boolean handed = visit.context().queryParam("handed") != null;
    return views.list(
        classes,
        useCases.reviewClass().overview(visit.instructor()),
        handed ? text("page.classes.handed") : null,
        name,
        practice);
  }

  private void open(Visit visit) {
    Form form = Form.of(visit);
    Practice practice = practice(form.text(PRACTICE));
    if (practice == null) {
      form.refuse(PRACTICE, text("page.classes.practice-missing"));
    } else {
      try {
        SchoolClass opened =
            useCases.openClass().open(visit.instructor(), form.text("name"), practice);
        visit.goTo("/classes/" + opened.id() + "?made=yes");
        return;
      } catch (Refused refused) {
        refuse(form, refused);
      }
    }
    ClassesView view = list(visit, form.text("name"), form.text(PRACTICE));
    pages.showAgain(visit, LIST, text("page.classes.heading"), view, form.problems());
  }

  private void refuse(Form form, Refused refused) {
    switch (refused.reason()) {
      case NAME_UNFIT -> form.refuse("name", text("page.classes.name-unfit"));
      case TOO_MANY_CLASSES -> form.refuse("name", text("page.classes.too-many"));
      default -> throw refused;
    }
  }

  private void show(Visit visit) {
    ClassView view = view(visit);
    pages.show(visit, CLASS, view.name(), view);
  }

  private void handOver(Visit visit) {
    Form form = Form.of(visit);
    String colleague = form.text("colleague");
    if (colleague.isEmpty()) {
      form.refuse("colleague", text("page.class.hand-whom"));
      ClassView view = view(visit);
      pages.showAgain(visit, CLASS, view.name(), view, form.problems());
      return;
    }
    useCases
        .handOverClass()
        .handOver(visit.instructor(), visit.context().pathParam("id"), colleague);
    visit.goTo("/classes?handed=yes");
  }

  private ClassView view(Visit visit) {
    String id = visit.context().pathParam("id");
    SchoolClass shown = useCases.openClass().of(visit.instructor(), id);
    List<Progress> progress = useCases.assignDrill().progress(visit.instructor(), id);
    return views.one(
        shown,
        useCases.reviewClass().silent(visit.instructor(), id).size(),
        LanAddresses.origin(visit),
        news(visit, progress),
        progress,
        useCases.reviewClass().review(visit.instructor(), id),
        useCases.handOverClass().colleagues(visit.instructor()));
  }

  private @Nullable String news(Visit visit, List<Progress> progress) {
    if (visit.context().queryParam("made") != null) {
      return text("page.class.made");
    }
    String assigned = visit.context().queryParam("assigned");
    return progress.stream()
        .filter(each -> each.assignment().id().equals(assigned))
        .findFirst()
        .map(each -> text("page.class.assigned", views.title(each)))
        .orElse(null);
  }

  private static @Nullable Practice practice(String typed) {
    try {
      return Practice.parse(typed);
    } catch (IllegalArgumentException none) {
      return null;
    }
  }

  private String text(String key, Object... arguments) {
    return pages.wording().text(key, arguments);
  }
}
