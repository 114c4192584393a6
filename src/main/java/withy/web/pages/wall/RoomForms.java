package withy.web.pages.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    return new RoomForm(
        stretch.shown().address(Shown.PATH + "/room").toString(),
        classes.stream()
            .map(each -> new RoomChoice(each.id(), each.name(), each.id().equals(chosen)))
            .toList(),
        questions(stretch));
  }

  private List<RoomChoice> questions(Stretch stretch) {
    List<RoomChoice> questions = new ArrayList<>();
    if (!ahead(stretch).isEmpty()) {
      questions.add(new RoomChoice(NEXT_MARK, wording.text("page.wall.ask-next"), true));
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

  /** The lateral marks before her, the one that is called first. */
  private static List<Position> ahead(Stretch stretch) {
    List<Call> calls = stretch.voyage().calls();
    return calls
        .subList(Math.min(calls.size(), Math.max(0, stretch.place() - 1)), calls.size())
        .stream()
        .map(Call::mark)
        .filter(each -> each.kind().isLateral())
        .map(PlacedMark::position)
        .toList();
  }

  /** What was chosen; empty for what is not offered. */
  Optional<Wanted> wanted(Stretch stretch, String question) {
    if (question.equals(NEXT_MARK)) {
      List<Position> ahead = ahead(stretch);
      return ahead.isEmpty()
          ? Optional.empty()
          : Optional.of(
              new Wanted(
                  stretch.shown().practice(),
                  Form.SIDE,
                  stretch.survey(),
                  ahead,
                  stretch.voyage().travel()));
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

  private static Wanted anyMark(Stretch stretch, Form form, @Nullable SurveyedWater water) {
    return new Wanted(stretch.shown().practice(), form, water, List.of(), Travel.NONE);
  }

  /** How learners find it in their list. */
  String title(Item item) {
    String label = item.scenario().mark().label();
    return label == null
        ? wording.text("page.wall.title-any")
        : wording.text("page.wall.title-mark", label);
  }
}
