package withy.web.pages.instructor;

import java.util.List;

/** What the responses of a class say. */
public record ReviewView(
    String schoolClass,
    String className,
    String base,
    List<ConceptRow> concepts,
    List<LearnerRows> learners,
    List<ConfusionRow> confusions) {}
