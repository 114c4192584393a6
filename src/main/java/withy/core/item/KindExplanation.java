package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkRule;
import withy.core.mark.Telling;
import withy.core.scenario.Scenario;
import withy.core.scenario.View;

/** The rule by which a kind of mark is told, with the facts of the case. */
final class KindExplanation {
  private KindExplanation() {}

  static Message of(Scenario scenario) {
    MarkDescription mark = scenario.described();
    @Nullable Telling telling = mark.telling();
    return telling == null
        ? Message.of("rule.mark-told-by-look", Words.name(mark), Message.of(mark.lookKey()))
        : Message.of(
            rule(telling, scenario.situation().view()).messageKey() + "." + mark.kind().id(),
            Words.name(mark),
            scenario.practice().region(),
            scenario.mark().appearance().colours().get(0));
  }

  private static MarkRule rule(Telling telling, View view) {
    return switch (view) {
      case NEAR -> telling.look();
      case DISTANT -> telling.silhouette();
      case LIGHT -> telling.light();
    };
  }
}
