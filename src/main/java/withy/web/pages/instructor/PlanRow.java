package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.response.DrillKind;

/**
 * A session of a course.
 *
 * @param title of the drill that it turns into
 * @param concepts of that drill; empty for all
 * @param opens as a field for day and time holds it
 * @param due as a field for day and time holds it
 * @param water id of the water in which it lies; empty for none in particular
 * @param number of the day of a kept plan on which a drill set is drilled; null where the drill is
 *     made of the concepts
 */
public record PlanRow(
    String day,
    String purpose,
    String who,
    String what,
    String why,
    String title,
    List<String> concepts,
    int length,
    DrillKind kind,
    String opens,
    String due,
    String water,
    @Nullable Integer number) {}
