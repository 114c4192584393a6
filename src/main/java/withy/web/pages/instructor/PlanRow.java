package withy.web.pages.instructor;

import java.util.List;

/**
 * A session of a course.
 *
 * @param title of the drill that it turns into
 * @param concepts of that drill; empty for all
 * @param due as a field for day and time holds it
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
    String due) {}
