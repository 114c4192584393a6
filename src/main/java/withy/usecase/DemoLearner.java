package withy.usecase;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.item.Item;
import withy.core.item.Misconception;

/** Answers a drill as somebody does who has got a few things wrong, and slips now and then. */
final class DemoLearner {
  private static final int MILLE = 1000;
  private static final int NOT_SURE_ONE_IN = 3;

  private final DemoPlan.Member member;
  private final List<Misconception> beliefs;
  private final Chance chance;

  DemoLearner(DemoPlan.Member member, int drill, Chance chance) {
    this.member = member;
    this.beliefs = member.beliefsIn(drill);
    this.chance = chance;
  }

  /** How long the learner looks at an item, half to one and a half times as long as usual. */
  Duration shown() {
    int usual = member.secondsPerItem() * MILLE;
    return Duration.ofMillis(chance.between(usual / 2, usual + usual / 2));
  }

  /** What the learner answers; null for "not sure". */
  @Nullable Given given(IssuedItem issued) {
    String value = value(issued.item());
    return value == null ? null : AnswerReading.given(issued, value);
  }

  private @Nullable String value(Item item) {
    if (chance.below(MILLE) < member.slip() * MILLE) {
      return chance.oneIn(NOT_SURE_ONE_IN) ? null : chance.pick(item.answer().foreseen());
    }
    return believed(item).orElse(item.key());
  }

  /** Where a belief of the learner's leads, if it speaks of what the item measures. */
  private Optional<String> believed(Item item) {
    return beliefs.stream()
        .filter(each -> each.concepts().contains(item.measures()))
        .map(item::led)
        .flatMap(Optional::stream)
        .findFirst();
  }
}
