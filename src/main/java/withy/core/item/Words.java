package withy.core.item;

import withy.core.Term;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.mark.PracticeNames;
import withy.core.mark.Side;
import withy.core.scenario.Scenario;

/** Messages that several forms share. */
final class Words {
  private Words() {}

  /** What a practice calls a kind of mark. */
  static Message mark(Practice practice, MarkKind kind) {
    return Message.of(PracticeNames.key(practice, kind));
  }

  /** The name of a mark. */
  static Message name(MarkDescription mark) {
    return Message.of(mark.nameKey());
  }

  /** What the practice calls the mark that is asked about. */
  static Message mark(Scenario scenario) {
    return mark(scenario.practice(), scenario.mark().kind());
  }

  /** A character by the value that stands for it; it reads the same in every language. */
  static Message light(String value) {
    return Message.of("option.light", value.replace('_', ' '));
  }

  /** A word of the trade by itself. */
  static Message term(Term term) {
    return Message.of("option.term", term);
  }

  /** The side as part of a sentence: "left to port". */
  static Message left(Side side) {
    return Message.of("left." + side.id());
  }
}
