package withy.web.pages.learner;

import java.util.List;

/** The concepts that stand alike. */
public record StandingGroup(String word, String note, List<String> concepts) {}
