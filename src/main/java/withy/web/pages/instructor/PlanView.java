package withy.web.pages.instructor;

import java.util.List;

/**
 * A course of a class, day by day.
 *
 * @param practical as typed
 * @param evenings as typed
 * @param says what the rows are, or what to do to see some
 */
public record PlanView(
    String schoolClass,
    String className,
    String practical,
    String evenings,
    List<Choice> waters,
    String water,
    String says,
    List<PlanRow> rows) {}
