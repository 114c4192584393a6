package withy.web.pages.colleagues;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import withy.usecase.InstructorAccount;
import withy.usecase.Invitation;
import withy.usecase.InviteColleague;
import withy.usecase.InviteColleague.Invited;
import withy.usecase.Reason;
import withy.usecase.Refused;
import withy.usecase.Session;
import withy.usecase.SignIn;
import withy.usecase.UseCases;
import withy.web.LanAddresses;
import withy.web.Limits;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.Form;
import withy.web.pages.PageRenderer;
import withy.web.pages.ShownOnce;

/** The pages on which instructors invite colleagues, and on which those become instructors. */
public final class SchoolPages implements RouteGroup {
  private static final String JOIN = "colleagues/join";

  /** The invitation that was just made: its id, a full stop, its code. */
  private static final ShownOnce SHOWN = new ShownOnce("invitation", "/school");

  private final PageRenderer pages;
  private final InviteColleague inviteColleague;
  private final SignIn signIn;
  private final Limits limits;

  public SchoolPages(PageRenderer pages, UseCases useCases, Limits limits) {
    this.pages = pages;
    this.inviteColleague = useCases.inviteColleague();
    this.signIn = useCases.signIn();
    this.limits = limits;
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/school", Role.INSTRUCTOR, this::school),
        Route.post("/school/invitations", Role.INSTRUCTOR, this::invite),
        Route.post("/school/invitations/{id}/withdraw", Role.INSTRUCTOR, this::withdraw),
        Route.get("/join-school", Role.ANYONE, this::showJoin),
        Route.post("/join-school", Role.ANYONE, this::join));
  }

  private void school(Visit visit) {
    boolean withdrawn = visit.context().queryParam("withdrawn") != null;
    boolean full = visit.context().queryParam("full") != null;
    String news = withdrawn ? text("page.school.withdrawn") : null;
    SchoolView view =
        new SchoolView(
            inviteColleague.school().stream().map(InstructorAccount::name).toList(),
            inviteColleague.open(visit.instructor()).stream()
                .map(each -> row(visit, each))
                .toList(),
            full ? text("page.school.too-many", InviteColleague.MOST) : news);
    pages.show(visit, "colleagues/school", text("page.school.heading"), view);
  }

  private InvitationRow row(Visit visit, Invitation invitation) {
    String code = code(SHOWN.read(visit), invitation.id());
    return new InvitationRow(
        invitation.id(),
        pages.days().said(invitation.madeAt()),
        pages.days().said(invitation.expiresAt()),
        code,
        code == null ? null : LanAddresses.origin(visit) + "/join-school?code=" + code);
  }

  private static @Nullable String code(@Nullable String shown, String id) {
    String begin = id + ".";
    return shown != null && shown.startsWith(begin) ? shown.substring(begin.length()) : null;
  }

  private void invite(Visit visit) {
    try {
      Invited invited = inviteColleague.invite(visit.instructor());
      SHOWN.give(visit, invited.invitation().id() + "." + invited.code());
      visit.goTo("/school");
    } catch (Refused refused) {
      if (refused.reason() != Reason.TOO_MANY_INVITATIONS) {
        throw refused;
      }
      visit.goTo("/school?full=yes");
    }
  }

  private void withdraw(Visit visit) {
    inviteColleague.withdraw(visit.instructor(), visit.context().pathParam("id"));
    visit.goTo("/school?withdrawn=yes");
  }

  private void showJoin(Visit visit) {
    String code = Objects.requireNonNullElse(visit.context().queryParam("code"), "");
    pages.show(visit, JOIN, text("page.join-school.heading"), new JoinSchoolView(code, ""));
  }

  private void join(Visit visit) {
    Form form = Form.of(visit);
    String name = form.text("name");
    String password = form.text("password");
    try {
      limits.signIn(visit, () -> inviteColleague.join(form.text("code"), name, password));
      begin(visit, signIn.signIn(name, password));
    } catch (Refused refused) {
      refuse(form, refused);
      JoinSchoolView view = new JoinSchoolView(form.text("code"), name);
      pages.showAgain(visit, JOIN, text("page.join-school.heading"), view, form.problems());
    }
  }

  private void refuse(Form form, Refused refused) {
    switch (refused.reason()) {
      case WRONG_INVITATION -> form.refuse("code", text("page.join-school.code-wrong"));
      case NAME_UNFIT -> form.refuse("name", text("page.set-up.name-unfit"));
      case NAME_TAKEN -> form.refuse("name", text("page.join-school.name-taken"));
      case PASSWORD_UNFIT -> form.refuse("password", text("page.set-up.password-unfit"));
      default -> throw refused;
    }
  }

  private void begin(Visit visit, Session session) {
    visit.begin(signIn, session);
    visit.goTo("/classes");
  }

  private String text(String key, Object... arguments) {
    return pages.wording().text(key, arguments);
  }
}
