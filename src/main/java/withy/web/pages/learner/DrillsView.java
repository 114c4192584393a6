package withy.web.pages.learner;

import java.util.List;

/** The learner's home: drills, and where they stand. */
public record DrillsView(String schoolClass, List<DrillRow> drills, List<StandingGroup> standing) {}
