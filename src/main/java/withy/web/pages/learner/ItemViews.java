package withy.web.pages.learner;

import withy.core.item.Assembly;
import withy.core.item.Item;
import withy.core.scenario.LightQuestion;
import withy.core.scenario.View;
import withy.usecase.IssuedItem;
import withy.usecase.ListAssignments.OwnAssignment;
import withy.usecase.OpaqueOption;
import withy.web.pages.ItemPictures;
import withy.wording.ItemWording;
import withy.wording.Wording;

/** Puts items that are to be answered into words and pictures. */
final class ItemViews {
  private final DrillNames names;
  private final ItemWording items;
  private final ItemPictures pictures;
  private final AnswerViews answers;

  ItemViews(Wording wording) {
    this.names = new DrillNames(wording);
    this.items = new ItemWording(wording);
    this.pictures = new ItemPictures(wording);
    this.answers = new AnswerViews(wording, pictures);
  }

  ItemView item(
      OwnAssignment drill,
      IssuedItem issued,
      String responseId,
      long now,
      boolean still,
      TypedAnswer typed) {
    Item item = issued.item();
    return new ItemView(
        drill.id(),
        names.title(drill),
        names.place(drill, issued),
        issued.id(),
        responseId,
        now,
        pictures.asked(item),
        ItemPictures.isChart(item),
        isFlashing(item),
        still,
        items.prompt(item),
        items.facts(item),
        issued.options().stream().map(each -> choice(issued.item(), each)).toList(),
        answers.number(item, typed),
        answers.slots(issued, typed),
        typed.isUnsure());
  }

  private Choice choice(Item item, OpaqueOption offered) {
    return new Choice(
        offered.token(),
        items.option(offered.option()),
        pictures.option(item, offered.option()).orElse(null),
        ItemPictures.asks(item, LightQuestion.WHICH_LIGHT));
  }

  /** Whether there is a light in the picture that can be stopped. */
  private static boolean isFlashing(Item item) {
    return item.scenario().situation().view() == View.LIGHT
        && !ItemPictures.asks(item, LightQuestion.RHYTHM)
        && item.scenario().lookout() == null
        && !(item.answer() instanceof Assembly);
  }
}
