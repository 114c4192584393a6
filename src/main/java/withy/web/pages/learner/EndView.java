package withy.web.pages.learner;

import java.util.List;

/** The end of a drill, or of an item in the room that was shown before the learner answered. */
public record EndView(String heading, String sentence, List<StandingGroup> standing) {}
