package withy.web.pages.learner;

import org.jspecify.annotations.Nullable;
import withy.core.drill.Grounds;
import withy.core.item.Item;
import withy.core.item.Quantity;
import withy.core.scenario.TimeOfDay;
import withy.usecase.Feedback;
import withy.usecase.ListAssignments.OwnAssignment;
import withy.web.pages.GroundsWords;
import withy.web.pages.ItemPictures;
import withy.wording.ItemWording;
import withy.wording.Wording;

/** Puts what is told of an answer into words and pictures. */
final class FeedbackViews {
  private final Wording wording;
  private final DrillNames names;
  private final ItemWording items;
  private final AnswerViews answers;
  private final FeedbackPictures pictures;
  private final FurtherReading reading;
  private final GroundsWords grounds;

  FeedbackViews(Wording wording) {
    this.wording = wording;
    this.names = new DrillNames(wording);
    this.items = new ItemWording(wording);
    ItemPictures drawn = new ItemPictures(wording);
    this.answers = new AnswerViews(wording, drawn);
    this.pictures = new FeedbackPictures(wording, drawn, answers);
    this.reading = new FurtherReading(wording);
    this.grounds = new GroundsWords(wording);
  }

  /**
   * The page of an answer.
   *
   * @param why the item was asked; null where everybody is asked alike
   */
  FeedbackView feedback(OwnAssignment drill, Feedback feedback, @Nullable Grounds why) {
    Item item = feedback.issued().item();
    String chosen = feedback.chosen();
    return new FeedbackView(
        drill.id(),
        names.title(drill),
        names.place(drill, feedback.issued()),
        chosen != null,
        feedback.correct(),
        verdict(feedback),
        isDark(item),
        chosen == null ? wording.text("page.item.not-sure") : answers.said(item, chosen),
        !feedback.correct() || item.answer() instanceof Quantity,
        wording.text(keyLabel(item)),
        answers.key(item),
        answers.parts(item, chosen),
        pictures.of(item, chosen),
        items.facts(item),
        wording.text(feedback.explanation()),
        items.sailed(item, chosen),
        feedback.mistook() == null ? null : wording.text(feedback.mistook()),
        reading.of(item, chosen),
        why == null ? alike(drill) : grounds.toLearner(why));
  }

  private String alike(OwnAssignment drill) {
    return wording.text("page.why." + (drill.room() ? "room" : drill.kind().id()));
  }

  private String verdict(Feedback feedback) {
    if (feedback.chosen() == null) {
      return wording.text("page.feedback.unsure");
    }
    return wording.text("page.feedback." + (feedback.correct() ? "right" : "wrong"));
  }

  /** Of a light ashore the picture is a diagram on paper, though it is asked about at night. */
  private static boolean isDark(Item item) {
    return item.scenario().situation().time() == TimeOfDay.NIGHT
        && item.scenario().lookout() == null;
  }

  private static String keyLabel(Item item) {
    if (item.answer() instanceof Quantity) {
      return "page.feedback.works-out";
    }
    return switch (item.form()) {
      case SIDE, CHANNEL_CHOICE, CARDINAL_PASS -> "page.feedback.safe";
      default -> "page.feedback.key";
    };
  }
}
