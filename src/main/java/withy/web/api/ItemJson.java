package withy.web.api;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.drawing.ItemPicture;
import withy.drawing.Svg;
import withy.usecase.Feedback;
import withy.usecase.IssuedItem;
import withy.usecase.OpaqueOption;
import withy.wording.ItemWording;
import withy.wording.Wording;

/** Shows a learner an item without its key, and the key once the answer is stored. */
final class ItemJson {
  private final Wording wording;
  private final ItemWording words;

  ItemJson(Wording wording) {
    this.wording = wording;
    this.words = new ItemWording(wording);
  }

  record Shown(
      String item,
      String form,
      String prompt,
      String picture,
      @Nullable String plan,
      int position,
      List<String> facts,
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
    ItemPicture picture = ItemPicture.question(issued.item());
    Svg plan = picture.plan();
    return new Shown(
        issued.id(),
        issued.item().form().id(),
        words.prompt(issued.item()),
        picture.view().text(),
        plan == null ? null : plan.text(),
        issued.position(),
        words.facts(issued.item()),
        issued.options().stream().map(this::choice).toList());
  }

  private Choice choice(OpaqueOption offered) {
    return new Choice(offered.token(), wording.text(offered.option().text()));
  }

  FeedbackJson feedback(Feedback feedback) {
    return new FeedbackJson(
        feedback.correct(),
        feedback.keyToken(),
        wording.text(feedback.keyText()),
        wording.text(feedback.explanation()),
        feedback.misconception() == null ? null : feedback.misconception().id(),
        feedback.mistook() == null ? null : wording.text(feedback.mistook()));
  }
}
