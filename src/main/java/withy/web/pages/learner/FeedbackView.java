package withy.web.pages.learner;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a learner is told of an answer. */
public record FeedbackView(
    String assignment,
    String title,
    String place,
    boolean answered,
    boolean right,
    String verdict,
    boolean night,
    String answer,
    boolean keyShown,
    String keyLabel,
    String key,
    List<GradedPart> parts,
    List<Shown> pictures,
    List<String> facts,
    String rule,
    @Nullable String assumed) {}
