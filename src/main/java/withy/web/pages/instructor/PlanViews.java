package withy.web.pages.instructor;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import withy.core.Term;
import withy.core.course.Purpose;
import withy.core.course.Session;
import withy.core.course.Theme;
import withy.core.item.Concept;
import withy.core.response.DrillKind;
import withy.usecase.ListWaters.Listed;
import withy.usecase.SchoolClass;
import withy.web.pages.Days;
import withy.web.pages.PageRenderer;

/** Puts the plan of a course into words. */
final class PlanViews {
  private static final int SHORTEST = 12;
  private static final int LONGEST = 24;

  /** As many as the test of readiness may need. */
  private static final int READINESS = 40;

  private final Days days;
  private final Phrases phrases;

  PlanViews(PageRenderer pages) {
    this.days = pages.days();
    this.phrases = new Phrases(pages.wording());
  }

  PlanView view(
      SchoolClass schoolClass, List<Listed> waters, PlanAsked asked, List<Session> sessions) {
    return new PlanView(
        schoolClass.id(),
        schoolClass.name(),
        asked.practical(),
        asked.evenings(),
        waters(waters, asked.water()),
        asked.water(),
        phrases.text(sessions.isEmpty() ? "plan.none" : "plan.says"),
        rows(sessions));
  }

  private List<Choice> waters(List<Listed> waters, String chosen) {
    List<Choice> choices = new ArrayList<>();
    choices.add(new Choice("", phrases.text("plan.any-water"), chosen.isEmpty(), null));
    for (Listed each : waters) {
      String id = each.water().id();
      choices.add(new Choice(id, each.water().title(), id.equals(chosen), null));
    }
    return choices;
  }

  private List<PlanRow> rows(List<Session> sessions) {
    return sessions.stream().map(this::row).toList();
  }

  private PlanRow row(Session session) {
    String what = themes(session.first().isEmpty() ? session.again() : session.first());
    String purpose = phrases.name(session.purpose());
    return new PlanRow(
        days.day(session.on()),
        purpose,
        phrases.text(session.together() ? "plan.together" : "plan.alone"),
        what,
        why(session),
        phrases.text("plan.title", purpose, days.shortDay(session.on())),
        session.concepts().stream().map(Term::id).toList(),
        length(session),
        session.purpose() == Purpose.READINESS ? DrillKind.READINESS : DrillKind.ADAPTIVE,
        days.startOf(session.on()),
        days.endOf(session.on()));
  }

  private String themes(List<Concept> concepts) {
    Set<Theme> themes = new LinkedHashSet<>();
    concepts.forEach(each -> themes.add(Theme.of(each)));
    return themes.stream().map(phrases::name).collect(Collectors.joining(", "));
  }

  private String why(Session session) {
    return switch (session.purpose()) {
      case FIRST_MEETING ->
          session.gap() == 0
              ? phrases.text("plan.why-first")
              : phrases.text("plan.why-next", session.gap());
      case RETURN -> phrases.text("plan.why-return", session.gap(), session.daysLeft());
      case READINESS -> phrases.text("plan.why-readiness", session.daysLeft());
      case REHEARSAL -> phrases.text("plan.why-rehearsal");
    };
  }

  private static int length(Session session) {
    int wanted = 2 * session.concepts().size();
    return session.purpose() == Purpose.READINESS
        ? READINESS
        : Math.max(SHORTEST, Math.min(LONGEST, wanted));
  }
}
