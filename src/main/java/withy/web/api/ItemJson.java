package withy.web.api;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.usecase.Feedback;
import withy.usecase.IssuedItem;
import withy.usecase.OpaqueOption;

/** Shows a learner an item without its key, and the key once the answer is stored. */
final class ItemJson {
  private final ItemVoice voice;

  ItemJson(ItemVoice voice) {
    this.voice = voice;
  }

  record Shown(
      String item,
      String form,
      String prompt,
      String picture,
      int position,
      List<Choice> options) {}

  record Choice(String value, String text) {}

  record FeedbackJson(
      boolean correct,
      String key,
      String keyText,
      String explanation,
      @Nullable String misconception,
      @Nullable String mistook) {}

  Shown shown(IssuedItem issued) {
    return new Shown(
        issued.id(),
        issued.item().form().id(),
        voice.prompt(issued.item()),
        voice.picture(issued.item()).text(),
        issued.position(),
        issued.options().stream().map(this::choice).toList());
  }

  private Choice choice(OpaqueOption offered) {
    return new Choice(offered.token(), voice.text(offered.option().text()));
  }

  FeedbackJson feedback(Feedback feedback) {
    return new FeedbackJson(
        feedback.correct(),
        feedback.keyToken(),
        voice.text(feedback.keyText()),
        voice.text(feedback.explanation()),
        feedback.misconception() == null ? null : feedback.misconception().id(),
        feedback.mistook() == null ? null : voice.text(feedback.mistook()));
  }
}
