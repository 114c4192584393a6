package withy.web.pages.courses;

import java.util.List;

/**
 * A day of a course.
 *
 * @param number of it in the plan, from 0
 * @param what is drilled
 * @param choices of drill sets that may be drilled in place of what the plan proposes, which stands
 *     first
 */
public record DayRow(
    int number, String day, String purpose, String who, String what, List<Tick> choices) {}
