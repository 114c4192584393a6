package withy.web.pages.learner;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import withy.core.item.Assembly;
import withy.core.item.Feature;
import withy.core.item.Grade;
import withy.core.item.Item;
import withy.core.item.Option;
import withy.core.item.Part;
import withy.core.item.Passage;
import withy.core.item.Quantity;
import withy.usecase.IssuedItem;
import withy.usecase.OpaqueLeg;
import withy.usecase.OpaqueSlot;
import withy.usecase.OpaqueSlot.OpaquePart;
import withy.web.pages.ItemPictures;
import withy.web.pages.learner.SlotField.PartRow;
import withy.wording.ItemWording;
import withy.wording.Wording;

/** Puts what is answered without options into fields, and such answers into words. */
final class AnswerViews {
  private final Wording wording;
  private final ItemPictures pictures;
  private final ItemWording items;

  AnswerViews(Wording wording, ItemPictures pictures) {
    this.wording = wording;
    this.pictures = pictures;
    this.items = new ItemWording(wording);
  }

  /** The field of a number; null where none is asked for. */
  @Nullable NumberField number(Item item, TypedAnswer typed) {
    if (item.answer() instanceof Quantity quantity) {
      String label = wording.text("page.item.number", quantity.unit());
      return new NumberField(label, quantity.unit().symbol(), typed.number());
    }
    return null;
  }

  List<SlotField> slots(IssuedItem issued, TypedAnswer typed) {
    List<SlotField> slots = new ArrayList<>();
    issued.slots().forEach(each -> slots.add(slot(each, typed)));
    issued.legs().forEach(each -> slots.add(leg(issued.item(), each, typed)));
    return slots;
  }

  private SlotField leg(Item item, OpaqueLeg leg, TypedAnswer typed) {
    String chosen = typed.parts().getOrDefault(leg.name(), "");
    List<PartRow> rows =
        leg.sides().stream()
            .map(
                each ->
                    new PartRow(
                        each.token(),
                        items.option(each.option()),
                        each.token().equals(chosen),
                        null))
            .toList();
    return new SlotField(TypedAnswer.field(leg.name()), items.met(item, leg.number()), rows);
  }

  private SlotField slot(OpaqueSlot slot, TypedAnswer typed) {
    Feature feature = slot.feature();
    String chosen = typed.parts().getOrDefault(feature.id(), "");
    List<PartRow> rows = slot.parts().stream().map(each -> row(feature, each, chosen)).toList();
    return new SlotField(TypedAnswer.field(feature.id()), wording.name(feature), rows);
  }

  private PartRow row(Feature feature, OpaquePart offered, String chosen) {
    Optional<withy.drawing.Svg> picture = pictures.part(feature, offered.part());
    return new PartRow(
        offered.token(),
        wording.text(offered.part().text()),
        offered.token().equals(chosen),
        picture.orElse(null));
  }

  /** An answer in words. */
  String said(Item item, String given) {
    return wording.text(item.answer().text(given));
  }

  /** The right answer in words; of a number also how far off an answer may be. */
  String key(Item item) {
    String key = said(item, item.key());
    return item.answer() instanceof Quantity quantity
        ? wording.text("page.item.give-or-take", key, quantity.toleranceText())
        : key;
  }

  /** Part by part, mark by mark; nothing where the answer is one word or number. */
  List<GradedPart> parts(Item item, @Nullable String given) {
    if (item.answer() instanceof Passage passage && given != null) {
      return IntStream.range(0, passage.legs().size())
          .mapToObj(i -> graded(item, passage, given, i))
          .toList();
    }
    if (!(item.answer() instanceof Assembly assembly) || given == null) {
      return List.of();
    }
    Map<Feature, Part> right = assembly.parts(assembly.key());
    return assembly.parts(given).entrySet().stream()
        .map(each -> graded(each.getKey(), each.getValue(), right))
        .toList();
  }

  private GradedPart graded(Item item, Passage passage, String given, int leg) {
    Option chosen = passage.options(given).get(leg);
    Option key = passage.options(passage.key()).get(leg);
    return new GradedPart(
        items.met(item, leg),
        chosen.equals(key),
        items.option(chosen),
        items.option(key),
        why(chosen, passage.grade(given)));
  }

  /** Only what is not said of the whole answer. */
  private @Nullable String why(Option chosen, Grade whole) {
    return chosen.mistook() == null || chosen.mistook().equals(whole.mistook())
        ? null
        : wording.text(chosen.mistook());
  }

  private GradedPart graded(Feature feature, Part given, Map<Feature, Part> right) {
    Part key = right.getOrDefault(feature, given);
    return new GradedPart(
        wording.name(feature),
        given.equals(key),
        wording.text(given.text()),
        wording.text(key.text()),
        null);
  }
}
