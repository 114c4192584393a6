package withy.core.response;

import static withy.core.response.OfferedOption.UNEXPLAINED;

import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One answer of one learner to one item, with what was offered. Names of concepts and
 * misconceptions are kept as words, so that responses of any origin can be reviewed.
 *
 * @param learner who answered, not blank
 * @param assignment what it was answered for; may be empty
 * @param item belongs to one learner and one assignment; not blank
 * @param form the form of the item, not blank
 * @param practice the practice the item keeps to; may be empty
 * @param concepts what the item exercises; it measures the first
 * @param key the right answer, not empty
 * @param option the answer given; null for "not sure"
 * @param misconception what leads to the option given; null when correct and when not sure
 * @param offered the options offered, the key among them; empty where the answer was free (a
 *     number, a mark put together), and then {@code correct} stands for itself
 * @param correct whether the answer was right; "not sure" is not
 * @param shownMillis how long the item was shown, milliseconds, not negative
 * @param answeredAt when the answer was stored
 * @param rapid whether it came too fast for the item to have been read: it is kept and counted, but
 *     says nothing of what the learner holds
 */
public record Response(
    String learner,
    String assignment,
    String item,
    String form,
    String practice,
    List<String> concepts,
    String key,
    @Nullable String option,
    @Nullable String misconception,
    List<OfferedOption> offered,
    boolean correct,
    long shownMillis,
    Instant answeredAt,
    boolean rapid) {

  /** A response that was not given rapidly. */
  public Response(
      String learner,
      String assignment,
      String item,
      String form,
      String practice,
      List<String> concepts,
      String key,
      @Nullable String option,
      @Nullable String misconception,
      List<OfferedOption> offered,
      boolean correct,
      long shownMillis,
      Instant answeredAt) {
    this(
        learner,
        assignment,
        item,
        form,
        practice,
        concepts,
        key,
        option,
        misconception,
        offered,
        correct,
        shownMillis,
        answeredAt,
        false);
  }

  /**
   * @throws InvalidResponse when the parts contradict each other; the first contradiction in the
   *     order of {@link ResponseFlaw}
   */
  public Response {
    concepts = List.copyOf(concepts);
    offered = List.copyOf(offered);
    requireNames(learner, item, form, concepts, key);
    requireChoice(offered, key);
    requireAnswer(option, key, offered, correct);
    requireMisconception(option, misconception, offered, correct);
    require(shownMillis >= 0, ResponseFlaw.NEGATIVE_TIME, String.valueOf(shownMillis));
    Objects.requireNonNull(answeredAt);
  }

  /** The same without the misconceptions that the options do not name. */
  public Response namedAlone() {
    if (offered.stream().allMatch(each -> each.also().isEmpty())) {
      return this;
    }
    return new Response(
        learner,
        assignment,
        item,
        form,
        practice,
        concepts,
        key,
        option,
        misconception,
        offered.stream().map(OfferedOption::namedAlone).toList(),
        correct,
        shownMillis,
        answeredAt,
        rapid);
  }

  /** The option that was chosen; null for "not sure" and where the answer was free. */
  public @Nullable OfferedOption chosen() {
    return option == null ? null : find(offered, option);
  }

  /** The concept that this response measures. */
  public String measured() {
    return concepts.get(0);
  }

  private static void requireNames(
      String learner, String item, String form, List<String> concepts, String key) {
    require(!learner.isBlank(), ResponseFlaw.NO_LEARNER, learner);
    require(!item.isBlank(), ResponseFlaw.NO_ITEM, item);
    require(!form.isBlank(), ResponseFlaw.NO_FORM, form);
    require(!concepts.isEmpty(), ResponseFlaw.NO_CONCEPT, "");
    for (String concept : concepts) {
      require(OfferedOption.isPlain(concept), ResponseFlaw.NO_CONCEPT, concept);
    }
    require(!key.isEmpty(), ResponseFlaw.NO_KEY, key);
  }

  private static void requireChoice(List<OfferedOption> offered, String key) {
    if (offered.isEmpty()) {
      return;
    }
    Set<String> seen = new LinkedHashSet<>();
    for (OfferedOption option : offered) {
      require(seen.add(option.value()), ResponseFlaw.OPTION_TWICE, option.value());
    }
    require(offered.size() > 1, ResponseFlaw.ONE_OPTION, offered.get(0).value());
    OfferedOption right = find(offered, key);
    require(right != null, ResponseFlaw.KEY_NOT_OFFERED, key);
    require(
        right == null || right.misconception() == null, ResponseFlaw.KEY_WITH_MISCONCEPTION, key);
  }

  private static void requireAnswer(
      @Nullable String option, String key, List<OfferedOption> offered, boolean correct) {
    if (option == null) {
      require(!correct, ResponseFlaw.CORRECT_WITHOUT_KEY, "");
      return;
    }
    boolean free = offered.isEmpty();
    boolean isKey = option.equals(key);
    require(free || find(offered, option) != null, ResponseFlaw.OPTION_NOT_OFFERED, option);
    require(free || isKey || !correct, ResponseFlaw.CORRECT_WITHOUT_KEY, option);
    require(!isKey || correct, ResponseFlaw.WRONG_WITH_KEY, option);
  }

  private static void requireMisconception(
      @Nullable String option,
      @Nullable String misconception,
      List<OfferedOption> offered,
      boolean correct) {
    String named = Objects.requireNonNullElse(misconception, UNEXPLAINED);
    if (correct || option == null) {
      require(misconception == null, ResponseFlaw.MISCONCEPTION_WITHOUT_ERROR, named);
      return;
    }
    require(OfferedOption.isPlain(named), ResponseFlaw.MALFORMED_OPTION, named);
    OfferedOption given = find(offered, option);
    if (given != null) {
      String led = Objects.requireNonNullElse(given.misconception(), UNEXPLAINED);
      require(named.equals(led), ResponseFlaw.MISCONCEPTION_OF_ANOTHER_OPTION, named);
    }
  }

  private static @Nullable OfferedOption find(List<OfferedOption> offered, String value) {
    for (OfferedOption option : offered) {
      if (option.value().equals(value)) {
        return option;
      }
    }
    return null;
  }

  private static void require(boolean holds, ResponseFlaw flaw, String text) {
    if (!holds) {
      throw new InvalidResponse(flaw, text);
    }
  }
}
