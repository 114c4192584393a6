package withy.web.pages.instructor;

import org.jspecify.annotations.Nullable;

/**
 * One class of the instructor's list.
 *
 * @param answers how much was answered, by how many
 * @param last when somebody answered last; null before the first answer
 */
public record ClassRow(
    String id, String name, String practice, String code, String answers, @Nullable String last) {}
