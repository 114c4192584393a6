package withy.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.item.Item;
import withy.core.item.Quantity;
import withy.drawing.ItemPicture;
import withy.drawing.Svg;
import withy.usecase.Feedback;
import withy.usecase.Given;
import withy.usecase.IssuedItem;
import withy.usecase.OpaqueLeg;
import withy.usecase.OpaqueOption;
import withy.usecase.OpaqueSlot;
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
      List<Choice> options,
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Asked answer,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) List<SlotJson> slots,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) List<PartJson> parts) {}

  record Choice(String value, String text) {}

  /** That a number is asked for, and in which unit. */
  record Asked(String unit) {}

  record SlotJson(String slot, String text, List<Choice> choices) {}

  /**
   * One mark of a passage.
   *
   * @param part by which an answer names it
   * @param label the number or letter that it bears; null where it bears none
   */
  record PartJson(String part, @Nullable String label, String text, List<Choice> choices) {}

  record FeedbackJson(
      boolean correct,
      Object key,
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
        issued.options().stream().map(this::choice).toList(),
        issued.item().answer() instanceof Quantity quantity
            ? new Asked(quantity.unit().symbol())
            : null,
        issued.slots().stream().map(this::slot).toList(),
        issued.legs().stream().map(each -> part(issued.item(), each)).toList());
  }

  private SlotJson slot(OpaqueSlot slot) {
    List<Choice> choices =
        slot.parts().stream()
            .map(each -> new Choice(each.token(), wording.text(each.part().text())))
            .toList();
    return new SlotJson(slot.feature().id(), wording.name(slot.feature()), choices);
  }

  private PartJson part(Item item, OpaqueLeg leg) {
    return new PartJson(
        leg.name(),
        item.scenario().marks().get(leg.leg().mark()).label(),
        words.met(item, leg.number()),
        leg.sides().stream().map(this::choice).toList());
  }

  private Choice choice(OpaqueOption offered) {
    return new Choice(offered.token(), wording.text(offered.option().text()));
  }

  /** A word, or a word for each slot or part. */
  private static Object key(Given key) {
    if (key instanceof Given.Parts parts) {
      return parts.tokens();
    }
    return ((Given.Text) key).text();
  }

  FeedbackJson feedback(Feedback feedback) {
    return new FeedbackJson(
        feedback.correct(),
        key(feedback.key()),
        wording.text(feedback.keyText()),
        wording.text(feedback.explanation()),
        feedback.misconception() == null ? null : feedback.misconception().id(),
        feedback.mistook() == null ? null : wording.text(feedback.mistook()));
  }
}
