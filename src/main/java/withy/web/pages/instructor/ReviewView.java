package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the responses of a class say, and what to do about it.
 *
 * @param behind the address of all answers
 * @param silent who has not answered; null where all have
 * @param hidden what verdicts those could change who have not answered on a concept, a line each
 * @param teach what to teach next; null where nobody has answered
 * @param changes in the latest session, a line each; none where nobody answered before it
 * @param people of the class who answered, each with a page of their own
 * @param readiness how many are ready by a readiness drill, in one sentence
 * @param ready what it found, of each who began one
 * @param unready who has begun none; null where nobody has begun one, or everybody has
 * @param groups who could share a boat in the practical
 * @param table which mark is taken for which; null where no item asked for a mark
 */
public record ReviewView(
    String schoolClass,
    String className,
    String base,
    String behind,
    @Nullable String silent,
    List<Saying> hidden,
    @Nullable TeachNext teach,
    List<ConceptRow> concepts,
    List<Saying> changes,
    List<Choice> people,
    List<LearnerRows> learners,
    String readiness,
    List<Judged> ready,
    @Nullable String unready,
    List<GroupRow> groups,
    List<ConfusionRow> confusions,
    @Nullable ConfusionTableView table) {
  /**
   * What most of the class needs.
   *
   * @param why in one sentence
   * @param behind the address of the answers on it
   * @param needing how many most likely do not know it; 0 where nobody stands out
   */
  public record TeachNext(
      String concept, String name, String why, String behind, int needing, List<String> others) {}
}
