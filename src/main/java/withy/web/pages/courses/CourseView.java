package withy.web.pages.courses;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A course.
 *
 * @param says when its practical is, and in which waters
 * @param name in the form that changes it, as typed; and so the practical and the waters
 * @param classes that take it
 * @param choices all classes of the instructor's
 * @param planSays what the days are, or what to do to have some
 * @param againName as typed in the form that runs it again, and so the day
 */
public record CourseView(
    String id,
    String title,
    String says,
    @Nullable String news,
    List<ClassLink> classes,
    List<Tick> choices,
    String planSays,
    List<DayRow> days,
    String name,
    String practical,
    List<Tick> waters,
    String againName,
    String againPractical) {}
