package withy.web.pages.courses;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import withy.core.hydrography.SurveyedWater;
import withy.usecase.Course;
import withy.web.pages.Form;

/** Name, practical and waters of a course as they stand in a form, typed well or not. */
record Typed(String name, String practical, List<String> waters) {
  static final Typed NOTHING = new Typed("", "", List.of());

  static Typed of(Course course) {
    List<String> waters = course.waters().stream().map(SurveyedWater::id).toList();
    return new Typed(course.name(), course.practical().toString(), waters);
  }

  static Typed of(Form form) {
    return new Typed(form.text("name"), form.text("practical"), form.all("water"));
  }

  /** The day of the practical; empty if it is none. */
  Optional<LocalDate> day() {
    return Course.day(practical);
  }
}
