package withy.web.pages.learner;

import java.util.List;

/** The end of a drill. */
public record EndView(String sentence, List<StandingGroup> standing) {}
