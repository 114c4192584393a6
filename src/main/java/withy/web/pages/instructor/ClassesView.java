package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The instructor's classes, and the form to make one. */
public record ClassesView(
    List<ClassRow> classes, @Nullable String news, String name, List<Choice> practices) {}
