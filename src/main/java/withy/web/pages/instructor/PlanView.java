package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A course of a class, day by day.
 *
 * @param practical as typed
 * @param evenings as typed
 * @param course id of the course that the class takes; null where it takes none
 * @param courseSays what there is to say of it
 * @param proposed whether the rows are proposed and can be kept; else they are kept, or there are
 *     none
 * @param says what the rows are, or what to do to see some
 */
public record PlanView(
    String schoolClass,
    String className,
    String practical,
    String evenings,
    List<Choice> waters,
    String water,
    @Nullable String course,
    @Nullable String courseSays,
    boolean proposed,
    String says,
    List<PlanRow> rows) {}
