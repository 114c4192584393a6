package withy.web.pages.learner;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.item.Assembly;
import withy.core.item.Feature;
import withy.core.item.Item;
import withy.core.item.Part;
import withy.core.item.Quantity;
import withy.usecase.IssuedItem;
import withy.usecase.OpaqueSlot;
import withy.usecase.OpaqueSlot.OpaquePart;
import withy.web.pages.ItemPictures;
import withy.web.pages.learner.SlotField.PartRow;
import withy.wording.Wording;

/** Puts what is answered without options into fields, and such answers into words. */
final class AnswerViews {
  private final Wording wording;
  private final ItemPictures pictures;

  AnswerViews(Wording wording, ItemPictures pictures) {
    this.wording = wording;
    this.pictures = pictures;
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
    return issued.slots().stream().map(each -> slot(each, typed)).toList();
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

  /** Part by part; nothing where no mark was put together. */
  List<GradedPart> parts(Item item, @Nullable String given) {
    if (!(item.answer() instanceof Assembly assembly) || given == null) {
      return List.of();
    }
    Map<Feature, Part> right = assembly.parts(assembly.key());
    return assembly.parts(given).entrySet().stream()
        .map(each -> graded(each.getKey(), each.getValue(), right))
        .toList();
  }

  private GradedPart graded(Feature feature, Part given, Map<Feature, Part> right) {
    Part key = right.getOrDefault(feature, given);
    return new GradedPart(
        wording.name(feature),
        given.equals(key),
        wording.text(given.text()),
        wording.text(key.text()));
  }
}
