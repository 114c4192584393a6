package withy.web.pages.instructor;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.response.DrillKind;
import withy.core.response.DrillSet;
import withy.usecase.AssignDrill;
import withy.usecase.Assignment;
import withy.usecase.KeepDrillSet;
import withy.usecase.KeptDrillSet;
import withy.usecase.ListWaters;
import withy.usecase.Reason;
import withy.usecase.Refused;
import withy.usecase.SchoolClass;
import withy.usecase.UseCases;
import withy.web.Declined;
import withy.web.Fault;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.Form;
import withy.web.pages.PageRenderer;

/** The pages on which an instructor composes a drill and assigns it. */
public final class ComposePages implements RouteGroup {
  private static final String TEMPLATE = "compose/compose";
  private static final String ASSIGN = "assign";
  private static final String KEEP = "keep";

  private final PageRenderer pages;
  private final UseCases useCases;
  private final ComposeViews views;

  public ComposePages(PageRenderer pages, UseCases useCases) {
    this.pages = pages;
    this.useCases = useCases;
    this.views = new ComposeViews(pages, useCases.composeDrill(), useCases.foreseeDrill());
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/classes/{id}/compose", Role.INSTRUCTOR, this::begin),
        Route.post("/classes/{id}/compose", Role.INSTRUCTOR, this::compose),
        Route.post("/classes/{id}/assign/{set}", Role.INSTRUCTOR, this::assignAtOnce),
        Route.get("/classes/{id}/follow-up", Role.INSTRUCTOR, this::followUp),
        Route.post("/classes/{id}/follow-up", Role.INSTRUCTOR, this::followUpAtOnce));
  }

  private void begin(Visit visit) {
    String set = visit.context().queryParam("set");
    show(visit, set == null ? Draft.empty() : begun(visit, set), null);
  }

  /** A drill begun from a drill set, to be changed at will. */
  private Draft begun(Visit visit, String id) {
    DrillSet set = useCases.keepDrillSet().one(visit.instructor(), id).set();
    return Draft.of(set.composition(), set.title());
  }

  /** Assigns a drill set as it is: the first drill of a class takes one press. */
  private void assignAtOnce(Visit visit) {
    Draft draft = begun(visit, visit.context().pathParam("set"));
    visit.goTo(assigned(visit, draft, draft.composition().orElseThrow()));
  }

  /** Composes the drill that a weak spot asks for; nothing is assigned yet. */
  private void followUp(Visit visit) {
    Concept concept = concept(visit.context().queryParam("concept"));
    Composition composition =
        useCases.reviewClass().followUp(visit.instructor(), id(visit), concept);
    String name = pages.wording().name(concept);
    Draft draft = Draft.of(composition, text("page.compose.follow-up-title", name));
    show(visit, draft, text("page.compose.follow-up", name));
  }

  /** Assigns that drill in one press, to the class or to those who need it. */
  private void followUpAtOnce(Visit visit) {
    Form form = Form.of(visit);
    Concept concept = concept(form.text("concept"));
    List<String> needing =
        switch (form.text("to")) {
          case "needing" -> useCases.reviewClass().inNeed(visit.instructor(), id(visit), concept);
          case "learner" -> List.of(form.text("learner"));
          default -> List.of();
        };
    Assignment assigned =
        useCases
            .assignDrill()
            .assign(
                visit.instructor(),
                id(visit),
                text("page.compose.follow-up-title", pages.wording().name(concept)),
                useCases.reviewClass().followUp(visit.instructor(), id(visit), concept),
                null,
                new AssignDrill.Wanted(DrillKind.ADAPTIVE, null, needing));
    visit.goTo("/classes/" + id(visit) + "?assigned=" + assigned.id());
  }

  private void show(Visit visit, Draft draft, @Nullable String why) {
    ComposeView view = view(visit, draft, why);
    pages.show(visit, TEMPLATE, text("page.compose.heading"), view);
  }

  private ComposeView view(Visit visit, Draft draft, @Nullable String why) {
    List<KeepDrillSet.Listed> sets = useCases.keepDrillSet().all(visit.instructor());
    Draft seeded = draft.seeded(useCases.foreseeDrill().seed());
    return views.view(schoolClass(visit), sets, waters(visit), seeded, why);
  }

  private void compose(Visit visit) {
    Form form = Form.of(visit);
    Draft draft = Draft.typed(form, water(visit, form.text("water")));
    String wanted = form.text("do");
    if (!wanted.equals(ASSIGN) && !wanted.equals(KEEP)) {
      show(visit, draft.turned(), null);
      return;
    }
    check(form, draft);
    Optional<Composition> composition = draft.composition();
    if (form.refused() || composition.isEmpty()) {
      showAgain(visit, form, draft);
      return;
    }
    try {
      visit.goTo(
          wanted.equals(KEEP)
              ? kept(visit, draft, composition.get())
              : assigned(visit, draft, composition.get()));
    } catch (Refused refused) {
      refuse(form, refused);
      showAgain(visit, form, draft);
    }
  }

  private String assigned(Visit visit, Draft draft, Composition composition) {
    Assignment assigned = assign(visit, draft, composition);
    return "/classes/" + id(visit) + "?assigned=" + assigned.id();
  }

  private String kept(Visit visit, Draft draft, Composition composition) {
    KeptDrillSet kept =
        useCases.keepDrillSet().keep(visit.instructor(), titled(draft, composition), composition);
    return "/drill-sets/" + kept.id() + "?kept=yes";
  }

  private String titled(Draft draft, Composition composition) {
    String typed = draft.title().strip();
    if (!typed.isEmpty()) {
      return typed;
    }
    SurveyedWater water = composition.water();
    return draft.kind() == DrillKind.REHEARSAL && water != null
        ? text("page.compose.rehearsal-of", water.title())
        : views.title(composition);
  }

  private Assignment assign(Visit visit, Draft draft, Composition composition) {
    return useCases
        .assignDrill()
        .assign(
            visit.instructor(),
            id(visit),
            titled(draft, composition),
            composition,
            draft.dueAt(pages.days()),
            draft.wanted(pages.days()));
  }

  private void check(Form form, Draft draft) {
    if (!draft.lengthFits()) {
      form.refuse("length", text("page.compose.length-unfit", Composition.LONGEST));
    }
    if (!draft.dueFits(pages.days())) {
      form.refuse("due", text("page.compose.due-unfit"));
    }
    if (!draft.opensFits(pages.days())) {
      form.refuse("opens", text("page.compose.due-unfit"));
    }
    if (!form.refused() && draft.composition().isEmpty()) {
      form.refuse("concept", text("page.compose.nothing"));
    }
  }

  private void refuse(Form form, Refused refused) {
    switch (refused.reason()) {
      case NAME_UNFIT -> form.refuse("title", text("page.compose.title-unfit"));
      case DUE_BEFORE_OPEN -> form.refuse("due", text("page.compose.due-before-open"));
      case TOO_MANY_DRILL_SETS ->
          form.refuse("title", text("page.drill-sets.too-many", KeepDrillSet.MOST));
      case NO_PASSAGE -> form.refuse("water", text("page.compose.no-passage"));
      case NOTHING_TO_DRILL -> form.refuse("concept", text("page.compose.nothing"));
      default -> throw refused;
    }
  }

  private void showAgain(Visit visit, Form form, Draft draft) {
    ComposeView view = view(visit, draft, null);
    pages.showAgain(visit, TEMPLATE, text("page.compose.heading"), view, form.problems());
  }

  private List<ListWaters.Listed> waters(Visit visit) {
    return useCases.listWaters().all(visit.instructor());
  }

  private @Nullable SurveyedWater water(Visit visit, String id) {
    if (id.isEmpty()) {
      return null;
    }
    return waters(visit).stream()
        .map(ListWaters.Listed::water)
        .filter(each -> each.id().equals(id))
        .findFirst()
        .or(() -> useCases.keepDrillSet().water(visit.instructor(), id))
        .or(() -> useCases.keepCourse().water(visit.instructor(), id))
        .orElseThrow(() -> new Refused(Reason.UNKNOWN_WATER));
  }

  private SchoolClass schoolClass(Visit visit) {
    return useCases.openClass().of(visit.instructor(), id(visit));
  }

  private static String id(Visit visit) {
    return visit.context().pathParam("id");
  }

  private static Concept concept(@Nullable String typed) {
    try {
      return Term.parse(Concept.class, typed == null ? "" : typed);
    } catch (IllegalArgumentException none) {
      throw Declined.of(Fault.NOT_FOUND);
    }
  }

  private String text(String key, Object... arguments) {
    return pages.wording().text(key, arguments);
  }
}
