package withy.web.pages.instructor;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.course.Purpose;
import withy.core.course.Session;
import withy.core.course.Theme;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Concept;
import withy.core.response.DrillKind;
import withy.core.response.DrillSet;
import withy.usecase.Course;
import withy.usecase.PlannedSession;
import withy.usecase.SchoolClass;
import withy.web.pages.Days;
import withy.web.pages.PageRenderer;
import withy.wording.PlanReasons;

/** Puts the plan of a course into words. */
final class PlanViews {
  private static final int SHORTEST = 12;
  private static final int LONGEST = 24;

  /** As many as the test of readiness may need. */
  private static final int READINESS = 40;

  private final Days days;
  private final Phrases phrases;
  private final PlanReasons reasons;

  PlanViews(PageRenderer pages) {
    this.days = pages.days();
    this.phrases = new Phrases(pages.wording());
    this.reasons = new PlanReasons(pages.wording());
  }

  /**
   * The page of a plan.
   *
   * @param course that the class takes; null for none
   * @param kept whether the sessions are kept, not proposed
   */
  PlanView view(
      SchoolClass schoolClass,
      List<SurveyedWater> waters,
      PlanAsked asked,
      @Nullable Course course,
      List<PlannedSession> sessions,
      boolean kept) {
    return new PlanView(
        schoolClass.id(),
        schoolClass.name(),
        asked.practical(),
        asked.evenings(),
        waters(waters, asked.water()),
        asked.water(),
        course == null ? null : course.id(),
        course == null
            ? null
            : phrases.text("plan.of-course", course.name(), days.day(course.practical())),
        !kept && !sessions.isEmpty(),
        phrases.text(kept ? "plan.kept-says" : sessions.isEmpty() ? "plan.none" : "plan.says"),
        rows(sessions));
  }

  private List<Choice> waters(List<SurveyedWater> waters, String chosen) {
    List<Choice> choices = new ArrayList<>();
    choices.add(new Choice("", phrases.text("plan.any-water"), chosen.isEmpty(), null));
    for (SurveyedWater each : waters) {
      choices.add(new Choice(each.id(), each.title(), each.id().equals(chosen), null));
    }
    return choices;
  }

  private List<PlanRow> rows(List<PlannedSession> sessions) {
    List<PlanRow> rows = new ArrayList<>();
    for (int day = 0; day < sessions.size(); day++) {
      rows.add(row(sessions.get(day), day));
    }
    return rows;
  }

  private PlanRow row(PlannedSession planned, int day) {
    Session session = planned.session();
    DrillSet set = planned.set();
    SurveyedWater water = planned.water();
    String purpose = phrases.name(session.purpose());
    return new PlanRow(
        days.day(session.on()),
        purpose,
        phrases.text(session.together() ? "plan.together" : "plan.alone"),
        set == null ? what(session) : set.title(),
        set == null ? reasons.why(session) : reasons.whySet(),
        set == null ? title(session) : set.title(),
        session.concepts().stream().map(Term::id).toList(),
        length(session),
        kind(session),
        days.startOf(session.on()),
        days.endOf(session.on()),
        water == null ? "" : water.id(),
        set == null ? null : day);
  }

  /** The title of the drill of a day. */
  private String title(Session session) {
    String purpose = phrases.name(session.purpose());
    return phrases.text("plan.title", purpose, days.shortDay(session.on()));
  }

  static DrillKind kind(Session session) {
    return session.purpose() == Purpose.READINESS ? DrillKind.READINESS : DrillKind.ADAPTIVE;
  }

  private String what(Session session) {
    return themes(session.first().isEmpty() ? session.again() : session.first());
  }

  private String themes(List<Concept> concepts) {
    Set<Theme> themes = new LinkedHashSet<>();
    concepts.forEach(each -> themes.add(Theme.of(each)));
    return themes.stream().map(phrases::name).collect(Collectors.joining(", "));
  }

  private static int length(Session session) {
    int wanted = 2 * session.concepts().size();
    return session.purpose() == Purpose.READINESS
        ? READINESS
        : Math.max(SHORTEST, Math.min(LONGEST, wanted));
  }
}
