package withy.web.pages.instructor;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.usecase.Course;
import withy.web.Visit;
import withy.web.pages.Form;

/** What the plan of a course is asked for, as it stands in the address. */
record PlanAsked(String practical, String evenings, String water) {
  private static final String USUAL_EVENINGS = "4";

  static PlanAsked of(Visit visit) {
    String evenings = text(visit, "evenings");
    return new PlanAsked(
        text(visit, "practical"),
        evenings.isEmpty() ? USUAL_EVENINGS : evenings,
        text(visit, "water"));
  }

  /** What a course says already. */
  static PlanAsked of(Course course) {
    String water = course.waters().isEmpty() ? "" : course.waters().get(0).id();
    return new PlanAsked(course.practical().toString(), USUAL_EVENINGS, water);
  }

  /** What a form sends. */
  static PlanAsked of(Form form) {
    return new PlanAsked(form.text("practical"), form.text("evenings"), form.text("water"));
  }

  private static String text(Visit visit, String field) {
    @Nullable String asked = visit.context().queryParam(field);
    return asked == null ? "" : asked.strip();
  }

  boolean isEmpty() {
    return practical.isEmpty();
  }

  Optional<LocalDate> day() {
    try {
      return Optional.of(LocalDate.parse(practical));
    } catch (DateTimeException malformed) {
      return Optional.empty();
    }
  }

  /** How many evenings; 0 where that is no number. */
  int meetings() {
    try {
      return Integer.parseInt(evenings);
    } catch (NumberFormatException malformed) {
      return 0;
    }
  }
}
