package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the responses of a class say. */
public record ReviewView(
    String schoolClass,
    String className,
    String base,
    @Nullable String silent,
    List<ConceptRow> concepts,
    List<LearnerRows> learners,
    List<ConfusionRow> confusions) {}
