package withy.web.pages.instructor;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import withy.usecase.LearnerCaller;
import withy.usecase.Refused;
import withy.usecase.Session;
import withy.usecase.SetUp;
import withy.usecase.SignIn;
import withy.usecase.UseCases;
import withy.web.Limits;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.Form;
import withy.web.pages.PageRenderer;

/** The pages on which an instructor sets the server up, comes in and goes. */
public final class AccountPages implements RouteGroup {
  private static final String SET_UP = "account/set-up";
  private static final String SIGN_IN = "account/sign-in";

  private final PageRenderer pages;
  private final SetUp setUp;
  private final SignIn signIn;
  private final Limits limits;

  public AccountPages(PageRenderer pages, UseCases useCases, Limits limits) {
    this.pages = pages;
    this.setUp = useCases.setUp();
    this.signIn = useCases.signIn();
    this.limits = limits;
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/set-up", Role.ANYONE, this::showSetUp),
        Route.post("/set-up", Role.ANYONE, this::setUp),
        Route.get("/sign-in", Role.ANYONE, this::showSignIn),
        Route.post("/sign-in", Role.ANYONE, this::signIn),
        Route.post("/sign-out", Role.ANYONE, this::signOut));
  }

  private void showSetUp(Visit visit) {
    if (setUp.needed()) {
      String code = Objects.requireNonNullElse(visit.context().queryParam("code"), "");
      pages.show(visit, SET_UP, text("page.set-up.heading"), new SetUpView(code, ""));
    } else {
      visit.goTo("/sign-in");
    }
  }

  private void setUp(Visit visit) {
    Form form = Form.of(visit);
    String name = form.text("name");
    String password = form.text("password");
    try {
      limits.signIn(visit, () -> setUp.setUp(form.text("code"), name, password));
      begin(visit, signIn.signIn(name, password));
    } catch (Refused refused) {
      refuseSetUp(form, refused);
      SetUpView view = new SetUpView(form.text("code"), name);
      pages.showAgain(visit, SET_UP, text("page.set-up.heading"), view, form.problems());
    }
  }

  private void refuseSetUp(Form form, Refused refused) {
    switch (refused.reason()) {
      case WRONG_SET_UP_CODE -> form.refuse("code", text("page.set-up.code-wrong"));
      case NAME_UNFIT -> form.refuse("name", text("page.set-up.name-unfit"));
      case PASSWORD_UNFIT -> form.refuse("password", text("page.set-up.password-unfit"));
      default -> throw refused;
    }
  }

  private void showSignIn(Visit visit) {
    pages.show(visit, SIGN_IN, text("page.sign-in.heading"), new SignInView("", setUp.needed()));
  }

  private void signIn(Visit visit) {
    Form form = Form.of(visit);
    try {
      begin(
          visit,
          limits.signIn(visit, () -> signIn.signIn(form.text("name"), form.text("password"))));
    } catch (Refused refused) {
      refuseSignIn(form, refused);
      SignInView view = new SignInView(form.text("name"), setUp.needed());
      pages.showAgain(visit, SIGN_IN, text("page.sign-in.heading"), view, form.problems());
    }
  }

  private void refuseSignIn(Form form, Refused refused) {
    switch (refused.reason()) {
      case WRONG_SIGN_IN, NAME_UNFIT -> form.refuse("name", text("page.sign-in.wrong"));
      case TOO_MANY_TRIES -> form.refuse("name", text("page.sign-in.wait", seconds(refused)));
      default -> throw refused;
    }
  }

  private static long seconds(Refused refused) {
    Object wait = refused.details().isEmpty() ? Duration.ZERO : refused.details().get(0);
    return wait instanceof Duration duration
        ? Math.max(1, duration.plusMillis(999).toSeconds())
        : 1;
  }

  private void begin(Visit visit, Session session) {
    visit.begin(signIn, session);
    visit.goTo("/classes");
  }

  private void signOut(Visit visit) {
    Session session = visit.session();
    if (session == null) {
      visit.goTo("/");
      return;
    }
    signIn.signOut(session.token());
    visit.end();
    visit.goTo(session.caller() instanceof LearnerCaller ? "/" : "/sign-in");
  }

  private String text(String key, Object... arguments) {
    return pages.wording().text(key, arguments);
  }
}
