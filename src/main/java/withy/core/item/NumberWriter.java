package withy.core.item;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.mark.Colour;
import withy.core.mark.MarkRule;
import withy.core.mark.Practice;
import withy.core.scenario.Scenario;
import withy.core.scenario.TimeOfDay;

/** Asks for the number of a mark of a channel from the numbers of the others. */
final class NumberWriter implements ItemWriter {
  private static final int ENOUGH = 2;
  private static final int TRIES = 1000;

  @Override
  public Form form() {
    return Form.NUMBER;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return concept == Concept.NUMBERING && time == TimeOfDay.DAY;
  }

  @Override
  public Draft write(Task task) {
    for (int i = 0; i < TRIES; i++) {
      @Nullable Scenario scenario = ChannelLayout.drawn(task);
      if (scenario != null) {
        String key = String.valueOf(NumberedChannel.of(scenario).number());
        Distractors wrong = Distractors.of(task, Form.NUMBER, scenario, key);
        if (wrong.count() >= ENOUGH) {
          return draft(scenario, key, wrong);
        }
      }
    }
    throw new IllegalStateException("no channel leaves a number to be told");
  }

  private static Draft draft(Scenario scenario, String key, Distractors wrong) {
    return new Draft(
        Form.NUMBER,
        List.of(Concept.NUMBERING),
        scenario,
        Message.of(
            "prompt.number." + scenario.situation().travel().id(),
            scenario.practice().region(),
            NumberedChannel.of(scenario).colour()),
        new Option(key, text(key), null, null),
        wrong.options(NumberWriter::text),
        explanation(NumberedChannel.of(scenario), key));
  }

  /** A number on a mark reads the same in every language. */
  private static Message text(String value) {
    return Message.of("option.number", value);
  }

  private static Message explanation(NumberedChannel channel, String key) {
    String rule = MarkRule.RED_EVEN_GREEN_ODD.messageKey();
    Colour colour = channel.colour();
    @Nullable Integer pair = channel.pair();
    @Nullable Integer outer = channel.outer();
    if (pair != null) {
      Colour other = colour == Colour.RED ? Colour.GREEN : Colour.RED;
      return Message.of(rule + ".pair", other, Integer.toString(pair), key);
    }
    return outer != null
        ? Message.of(rule + ".further-in", colour, Integer.toString(outer), key)
        : Message.of(rule + ".further-out", colour, String.valueOf(channel.inner()), key);
  }
}
