package withy.web.pages.learner;

import org.jspecify.annotations.Nullable;

/**
 * One drill of the learner's list.
 *
 * @param opens when it opens; null once it has
 */
public record DrillRow(
    String id, String title, String left, @Nullable String due, @Nullable String opens) {}
