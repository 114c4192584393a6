package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.light.LightCharacter;
import withy.core.mark.BodyShape;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.mark.MarkingRules;
import withy.core.mark.Recognition;
import withy.core.scenario.LightQuestion;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;

/**
 * Several lights in sight at once: one with the character that the chart says, and others with the
 * characters for which beliefs take that.
 */
final class LightScene {
  /** Degrees off the bow at which lights stand; far enough apart to be told on the scale. */
  private static final List<Integer> PLACES = List.of(-21, -7, 7, 21);

  private static final int STRAY = 3;

  private LightScene() {}

  /** The scene round the light of a scenario; that light alone where nothing is taken for it. */
  static Scenario around(Task task, Scenario alone) {
    String charted = LightBeliefs.value(alone.mark().light());
    List<String> read = Distractors.of(task, Form.LIGHT, alone, charted).values();
    List<SightedMark> marks = new ArrayList<>();
    List<Integer> places = task.chance().shuffled(PLACES);
    marks.add(moved(task, alone, alone.mark(), places.get(0)));
    for (String each : task.chance().shuffled(read)) {
      LightCharacter light = LightBeliefs.read(each);
      List<MarkKind> kinds = Recognition.byLight(task.practice(), light);
      if (!kinds.isEmpty() && marks.size() < places.size()) {
        SightedMark like = showing(task, alone, kinds.get(0), light);
        marks.add(moved(task, alone, like, places.get(marks.size())));
      }
    }
    return new Scenario(alone.practice(), alone.situation(), marks)
        .asking(LightQuestion.WHICH_LIGHT);
  }

  private static SightedMark showing(
      Task task, Scenario alone, MarkKind kind, LightCharacter light) {
    MarkLook look = MarkingRules.look(task.practice(), kind);
    BodyShape body = look.typical().body();
    return new SightedMark(
        kind,
        alone.mark().bearing(),
        alone.mark().distance(),
        null,
        look.appearance(body, look.topmarkPossible(body), light));
  }

  private static SightedMark moved(Task task, Scenario alone, SightedMark mark, int place) {
    int off = place + task.chance().between(-STRAY, STRAY);
    Bearing bearing = alone.situation().heading().plus(off);
    return new SightedMark(mark.kind(), bearing, mark.distance(), mark.label(), mark.appearance());
  }

  /** The value of the light in sight that has a character; null where none has. */
  static @Nullable String valueOf(LightCharacter read, Scenario scenario) {
    String wanted = LightBeliefs.value(read);
    for (SightedMark each : scenario.marks()) {
      if (LightBeliefs.value(each.light()).equals(wanted)) {
        return value(each);
      }
    }
    return null;
  }

  static String value(SightedMark mark) {
    return "at-" + Math.round(mark.bearing().degrees()) % 360;
  }
}
