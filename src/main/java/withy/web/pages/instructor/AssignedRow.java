package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A drill that the class was asked to do. */
public record AssignedRow(
    String id, String title, String done, @Nullable String due, List<ProgressRow> learners) {}
