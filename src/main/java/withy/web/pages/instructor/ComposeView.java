package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A drill being composed.
 *
 * @param count how much each learner gets, as it stands
 * @param asked in which forms
 * @param where in which waters, when and how hard
 * @param how it is done and from when on
 */
public record ComposeView(
    String schoolClass,
    String className,
    @Nullable String why,
    long turn,
    List<Choice> begin,
    List<Choice> concepts,
    List<Choice> forms,
    List<Choice> times,
    List<Choice> waters,
    String length,
    int longest,
    String title,
    String due,
    String dueHint,
    List<Choice> kinds,
    String opens,
    List<Choice> practices,
    List<Choice> difficulties,
    String count,
    ComposeGroup asked,
    ComposeGroup where,
    ComposeGroup how,
    String sampleSays,
    long seed,
    String foreseenSays,
    List<ForeseenGroup> foreseen,
    List<Specimen> sample) {}
