package withy.web.pages.courses;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The courses of an instructor, and the form to make one, with what was typed. */
public record CoursesView(
    List<CourseRow> courses,
    @Nullable String news,
    String name,
    String practical,
    List<Tick> waters) {}
