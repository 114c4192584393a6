package withy.usecase;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.item.Item;
import withy.core.item.Misconception;
import withy.core.response.OfferedOption;

/**
 * On what belief a learner seems to act, and which items to ask so that the answers can show it.
 *
 * <p>Where several beliefs lead to one wrong option, it names only one of them. If it named another
 * one time in two, the learner's own answers would speak against what the learner believes, and
 * nothing could be told of somebody who is consistently wrong. So it is to name the one that the
 * learner has shown.
 *
 * @param belief null where the learner has shown none
 */
record LikelyBelief(@Nullable Misconception belief) {
  /**
   * The belief that most answers named; among equals the one named last. What no belief explains
   * names none.
   *
   * @param named by the answers of a learner on one concept, in their order
   */
  static LikelyBelief of(List<String> named) {
    @Nullable String most = null;
    for (String each : named) {
      if (each.equals(OfferedOption.UNEXPLAINED)) {
        continue;
      }
      if (most == null
          || Collections.frequency(named, each) >= Collections.frequency(named, most)) {
        most = each;
      }
    }
    return new LikelyBelief(most == null ? null : Term.parse(Misconception.class, most));
  }

  /** Whether the answer to which the belief leads names it, if it leads to one here. */
  boolean isNamedIn(Item item) {
    return belief == null
        || item.led(belief).flatMap(given -> namedBy(item, given)).map(belief::equals).orElse(true);
  }

  /** Empty where the answer is right. */
  private static Optional<Misconception> namedBy(Item item, String given) {
    return Optional.ofNullable(item.answer().grade(given).misconception());
  }
}
