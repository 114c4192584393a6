package withy.web.pages.learner;

import org.jspecify.annotations.Nullable;

/**
 * What a learner sees once after joining.
 *
 * @param drill the newest drill, with which the learner can begin; null where there is none
 * @param title of that drill
 */
public record WelcomeView(
    String nickname,
    String schoolClass,
    String returnCode,
    @Nullable String drill,
    @Nullable String title) {}
