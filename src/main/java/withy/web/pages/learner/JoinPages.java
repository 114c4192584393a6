package withy.web.pages.learner;

import java.util.List;
import withy.usecase.Caller;
import withy.usecase.JoinClass;
import withy.usecase.LearnerCaller;
import withy.usecase.ListAssignments;
import withy.usecase.ListAssignments.OwnAssignment;
import withy.usecase.OpenClass;
import withy.usecase.Refused;
import withy.usecase.SignIn;
import withy.usecase.UseCases;
import withy.web.Limits;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.Form;
import withy.web.pages.PageRenderer;
import withy.web.pages.ShownOnce;

/** The pages on which a learner joins a class or comes back to it. */
public final class JoinPages implements RouteGroup {
  private static final String CODE = "code";
  private static final String RETURN_CODE = "returnCode";

  private final PageRenderer pages;

  /** Of the return code only the digest is kept: a page lost on the way would lose it for good. */
  private static final ShownOnce SHOWN = new ShownOnce("returnCode", "/welcome");

  private final JoinClass joinClass;
  private final OpenClass openClass;
  private final ListAssignments listAssignments;
  private final DrillNames names;
  private final SignIn signIn;
  private final Limits limits;

  public JoinPages(PageRenderer pages, UseCases useCases, Limits limits) {
    this.pages = pages;
    this.joinClass = useCases.joinClass();
    this.openClass = useCases.openClass();
    this.listAssignments = useCases.listAssignments();
    this.names = new DrillNames(pages.wording());
    this.signIn = useCases.signIn();
    this.limits = limits;
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/", Role.ANYONE, this::entry),
        Route.get("/join/{code}", Role.ANYONE, this::invited),
        Route.post("/join", Role.ANYONE, this::join),
        Route.post("/come-back", Role.ANYONE, this::comeBack),
        Route.get(SHOWN.path(), Role.LEARNER, this::welcome));
  }

  private void entry(Visit visit) {
    Caller caller = visit.caller();
    if (caller == null) {
      pages.show(visit, "join/entry", title(), new EntryView("", "", ""));
    } else {
      visit.goTo(caller instanceof LearnerCaller ? "/drills" : "/classes");
    }
  }

  private void invited(Visit visit) {
    String code = visit.context().pathParam(CODE);
    pages.show(visit, "join/entry", title(), new EntryView(code, "", ""));
  }

  private void join(Visit visit) {
    Form form = Form.of(visit);
    try {
      JoinClass.Joined joined =
          limits.join(visit, () -> joinClass.join(form.text(CODE), form.text("nickname")));
      visit.begin(signIn, joined.session());
      SHOWN.give(visit, joined.returnCode());
      visit.goTo(SHOWN.path());
    } catch (Refused refused) {
      refuseJoin(form, refused);
      showAgain(visit, form);
    }
  }

  private void refuseJoin(Form form, Refused refused) {
    switch (refused.reason()) {
      case UNKNOWN_CODE -> form.refuse(CODE, text("page.join.code-unknown"));
      case NICKNAME_TAKEN -> form.refuse("nickname", text("page.join.nickname-taken"));
      case NICKNAME_UNFIT -> form.refuse("nickname", text("page.join.nickname-unfit"));
      case CLASS_FULL -> form.refuse(CODE, text("page.join.class-full"));
      default -> throw refused;
    }
  }

  private void comeBack(Visit visit) {
    Form form = Form.of(visit);
    try {
      visit.begin(signIn, limits.join(visit, () -> joinClass.comeBack(form.text(RETURN_CODE))));
      visit.goTo("/drills");
    } catch (Refused refused) {
      switch (refused.reason()) {
        case UNKNOWN_CODE -> form.refuse(RETURN_CODE, text("page.join.return-code-unknown"));
        default -> throw refused;
      }
      showAgain(visit, form);
    }
  }

  private void welcome(Visit visit) {
    String code = SHOWN.read(visit);
    if (code == null) {
      visit.goTo("/drills");
      return;
    }
    LearnerCaller learner = visit.learner();
    String schoolClass = openClass.of(learner).name();
    OwnAssignment drill = listAssignments.of(learner).stream().findFirst().orElse(null);
    WelcomeView view =
        new WelcomeView(
            learner.nickname(),
            schoolClass,
            code,
            drill == null ? null : drill.id(),
            drill == null ? null : names.title(drill));
    pages.show(visit, "join/welcome", text("page.welcome.title"), view);
  }

  private void showAgain(Visit visit, Form form) {
    EntryView view = new EntryView(form.text(CODE), form.text("nickname"), form.text(RETURN_CODE));
    pages.showAgain(visit, "join/entry", title(), view, form.problems());
  }

  private String title() {
    return text("page.join.heading");
  }

  private String text(String key) {
    return pages.wording().text(key);
  }
}
