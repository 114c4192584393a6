package withy.web.pages.learner;

import org.jspecify.annotations.Nullable;

/**
 * One part of a mark that was put together, or one mark of a passage, and what is right.
 *
 * @param why what led to it, if it is wrong and that is known of it alone; else null
 */
public record GradedPart(
    String feature, boolean right, String given, String key, @Nullable String why) {}
