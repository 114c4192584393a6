package withy.web.pages;

import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.usecase.Caller;
import withy.usecase.InstructorCaller;
import withy.usecase.LearnerCaller;
import withy.web.Assets;
import withy.web.ErrorPage;
import withy.web.Problem;
import withy.web.Visit;
import withy.wording.Wording;

/** Answers visits with pages, and says no to people with a page as well. */
public final class PageRenderer implements ErrorPage {
  private static final String HTML = "text/html; charset=utf-8";
  private static final int REFUSED = 422;
  private static final int MISSING = 404;

  private final Wording wording;
  private final Templates templates;
  private final Days days;

  /**
   * Pages in one language.
   *
   * @param zone in which days and hours are said and read
   */
  public PageRenderer(Wording wording, Assets assets, ZoneId zone) {
    this.wording = wording;
    this.templates = new Templates(wording, assets);
    this.days = new Days(wording, zone);
  }

  /** The words of the pages. */
  public Wording wording() {
    return wording;
  }

  /** How the pages say and read days and hours. */
  public Days days() {
    return days;
  }

  /** Answers with a page. */
  public void show(Visit visit, String template, String title, Object view) {
    answer(visit, 200, template, title, view, List.of());
  }

  /** Answers with the page of a form that was refused, which keeps what was typed. */
  public void showAgain(
      Visit visit, String template, String title, Object view, List<FieldProblem> problems) {
    answer(visit, REFUSED, template, title, view, problems);
  }

  /** Answers with a page in place of one that does not exist. */
  public void showInstead(Visit visit, String template, String title, Object view) {
    answer(visit, MISSING, template, title, view, List.of());
  }

  private void answer(
      Visit visit,
      int status,
      String template,
      String title,
      Object view,
      List<FieldProblem> problems) {
    Caller caller = visit.caller();
    String token = visit.session() == null ? null : visit.requestToken();
    Frame frame =
        new Frame(
            title,
            wording.locale().toLanguageTag(),
            role(caller),
            caller == null ? null : caller.name(),
            caller instanceof LearnerCaller ? caller.id() : null,
            token,
            problems);
    String page = templates.page(template, frame, view);
    visit.context().status(status).html(page).contentType(HTML);
  }

  private static @Nullable String role(@Nullable Caller caller) {
    if (caller == null) {
      return null;
    }
    return caller instanceof InstructorCaller ? "instructor" : "learner";
  }

  @Override
  public String html(Problem problem) {
    String language = wording.locale().toLanguageTag();
    Frame frame = new Frame(problem.title(), language, null, null, null, null, List.of());
    String next = wording.text("page.error.next." + advice(problem.status()));
    return templates.page("error", frame, new ErrorView(problem.title(), problem.detail(), next));
  }

  private static String advice(int status) {
    return switch (status) {
      case 401, 403 -> "sign-in";
      case 404 -> "address";
      case 429, 503 -> "wait";
      case 500 -> "again";
      default -> "back";
    };
  }
}
