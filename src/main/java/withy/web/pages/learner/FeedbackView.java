package withy.web.pages.learner;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.web.pages.Link;

/**
 * What a learner is told of an answer.
 *
 * @param sailed what becomes of the boat in the water; empty on open water
 * @param reference where to read on: the mark asked about, the one it was taken for
 * @param why it was asked, in a sentence
 */
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
    List<String> sailed,
    @Nullable String assumed,
    List<Link> reference,
    String why) {}
