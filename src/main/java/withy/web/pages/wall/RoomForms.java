package withy.web.pages.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Travel;
import withy.core.waterway.Call;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Voyage;
import withy.usecase.PutToRoom.Wanted;
import withy.usecase.SchoolClass;
import withy.wording.Wording;

/** Offers what can be asked of the water that is shown, and reads what was chosen. */
final class RoomForms {
  static final String NEXT_MARK = "next-mark";

  /** Forms whose items can lie in the water shown. */
  private static final List<Form> HERE =
      List.of(Form.SIDE, Form.CARDINAL_PASS, Form.CHANNEL_CHOICE);

  private final Wording wording;

  RoomForms(Wording wording) {
    this.wording = wording;
  }

  RoomForm form(Stretch stretch, List<SchoolClass> classes) {
    String chosen = stretch.shown().schoolClass();
    List<Optional<PlacedMark>> next = next(stretch);
    List<String> sides = new ArrayList<>();
    for (int step = 0; step < next.size(); step++) {
      sides.add(words(stretch, step, next.get(step)));
    }
    return new RoomForm(
        stretch.shown().address(Shown.PATH + "/room").toString(),
        classes.stream()
            .map(each -> new RoomChoice(each.id(), each.name(), each.id().equals(chosen)))
            .toList(),
        questions(stretch, sides.get(stretch.place())),
        sides);
  }

  private List<RoomChoice> questions(Stretch stretch, String side) {
    List<RoomChoice> questions = new ArrayList<>();
    if (!side.isEmpty()) {
      questions.add(new RoomChoice(NEXT_MARK, side, true));
    }
    for (Form each : HERE) {
      Composition asked = new Composition(List.of(), List.of(each), null, 1, stretch.survey());
      if (!ItemGenerator.measurable(stretch.shown().practice(), asked).isEmpty()) {
        questions.add(choice(each, wording.text("page.wall.ask-here", each)));
      }
    }
    questions.add(
        choice(
            Form.CHART_OVER_RULE, wording.text("page.wall.ask-elsewhere", Form.CHART_OVER_RULE)));
    return questions;
  }

  private static RoomChoice choice(Form form, String words) {
    return new RoomChoice(form.id(), words, false);
  }

  /**
   * The mark that is asked about at each step: the one that is called there if it can be, else the
   * first after it that can. One that was taken away is not: its name would tell what stood there.
   */
  private static List<Optional<PlacedMark>> next(Stretch stretch) {
    Voyage voyage = stretch.voyage();
    List<Position> askable =
        ItemGenerator.askedSides(stretch.survey(), stretch.shown().practice(), voyage.travel());
    List<Optional<PlacedMark>> next = new ArrayList<>();
    for (int step = 0; step < voyage.steps().size(); step++) {
      next.add(
          voyage.steps().stream()
              .skip(step)
              .flatMap(each -> Stream.ofNullable(each.call()))
              .map(Call::mark)
              .filter(each -> askable.contains(each.position()))
              .filter(each -> stretch.untold().filter(each::equals).isEmpty())
              .findFirst());
    }
    return next;
  }

  /** The question about the next mark, which names it; empty where none can be asked about. */
  private String words(Stretch stretch, int step, Optional<PlacedMark> next) {
    Call called = stretch.voyage().steps().get(step).call();
    MarkCalls calls = new MarkCalls(wording, stretch.shown().practice(), stretch.shown().night());
    return next.map(
            mark ->
                wording.text(
                    called == null || called.mark().equals(mark)
                        ? "page.wall.ask-next"
                        : "page.wall.ask-later",
                    calls.plain(mark)))
        .orElse("");
  }

  /** What was chosen; empty for what is not offered. */
  Optional<Wanted> wanted(Stretch stretch, String question) {
    if (question.equals(NEXT_MARK)) {
      return next(stretch).get(stretch.place()).map(mark -> side(stretch, mark));
    }
    return HERE.stream()
        .filter(each -> each.id().equals(question))
        .findFirst()
        .map(each -> anyMark(stretch, each, stretch.survey()))
        .or(
            () ->
                question.equals(Form.CHART_OVER_RULE.id())
                    ? Optional.of(anyMark(stretch, Form.CHART_OVER_RULE, null))
                    : Optional.empty());
  }

  private static Wanted side(Stretch stretch, PlacedMark mark) {
    return new Wanted(
        stretch.shown().practice(),
        Form.SIDE,
        stretch.survey(),
        mark.position(),
        stretch.voyage().travel());
  }

  private static Wanted anyMark(Stretch stretch, Form form, @Nullable SurveyedWater water) {
    return new Wanted(stretch.shown().practice(), form, water, null, Travel.NONE);
  }

  /** How learners find it in their list. */
  String title(Item item) {
    if (item.scenario().marks().isEmpty() || item.scenario().sailing() == null) {
      return wording.text("page.wall.title-any");
    }
    String label = item.scenario().mark().label();
    return label == null
        ? wording.text("page.wall.title-any")
        : wording.text("page.wall.title-mark", label);
  }
}
