package withy.wording;

import withy.core.course.Session;

/** Says why a plan drills on a day what it drills. */
public record PlanReasons(Wording wording) {
  /** Of a day that is drilled as it was proposed. */
  public String why(Session session) {
    return switch (session.purpose()) {
      case FIRST_MEETING -> session.gap() == 0 ? text("first") : text("next", session.gap());
      case RETURN -> text("return", session.gap(), session.daysLeft());
      case READINESS -> text("readiness", session.daysLeft());
      case REHEARSAL -> text("rehearsal");
    };
  }

  /** Of a day on which a drill set stands in place of what was proposed. */
  public String whySet() {
    return text("set");
  }

  private String text(String reason, Object... arguments) {
    return wording.text("page.plan.why-" + reason, arguments);
  }
}
