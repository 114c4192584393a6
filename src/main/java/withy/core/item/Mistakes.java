package withy.core.item;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.light.LightCharacter;
import withy.core.mark.ChannelIntent;
import withy.core.mark.MarkDescription;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;

/**
 * How learners confuse a mark: each belief is put before it by day, from afar and at night, with
 * and against the conventional direction, as in the items.
 */
public final class Mistakes {
  private static final Bearing AHEAD = Bearing.of(0);
  private static final Bearing ON_THE_BOW = Bearing.of(5);
  private static final double DISTANCE = 500;

  private final Practice practice;
  private final MarkDescription mark;
  private final Map<Misconception, Mistake> found = new LinkedHashMap<>();

  private Mistakes(Practice practice, MarkDescription mark) {
    this.practice = practice;
    this.mark = mark;
  }

  /** The mistakes over a mark, one a belief; none where nothing is asked about such marks. */
  public static List<Mistake> over(Practice practice, MarkDescription mark) {
    Mistakes mistakes = new Mistakes(practice, mark);
    for (View view : View.values()) {
      Sights.of(practice, mark, view).forEach(sight -> mistakes.seen(view, sight));
    }
    return List.copyOf(mistakes.found.values());
  }

  private void seen(View view, Sight sight) {
    Scenario alone = scenario(view, sight, Travel.NONE, null);
    List<String> right = new ArrayList<>(IdentifyWriter.alsoPossible(alone));
    right.add(mark.kind().id());
    ask(Form.IDENTIFY, alone, right);
    if (mark.kind().isCardinal()) {
      ask(Form.CARDINAL_PASS, alone, List.of("pass-" + mark.kind().quadrant().id()));
    }
    boolean junction = mark.kind().isPreferredChannel();
    for (Travel travel : List.of(Travel.WITH, Travel.AGAINST)) {
      if (junction) {
        for (ChannelIntent intent : ChannelIntent.values()) {
          side(Form.CHANNEL_CHOICE, scenario(view, sight, travel, intent));
        }
      } else {
        side(Form.SIDE, scenario(view, sight, travel, null));
      }
    }
  }

  private void side(Form form, Scenario scenario) {
    Situation situation = scenario.situation();
    mark.passing()
        .side(situation.travel(), situation.intent())
        .ifPresent(side -> ask(form, scenario, List.of(side.id())));
  }

  private void ask(Form form, Scenario scenario, List<String> right) {
    Situation situation = scenario.situation();
    for (Misconception belief : Misconception.values()) {
      belief
          .answer(form, scenario)
          .filter(value -> !right.contains(value))
          .ifPresent(
              value ->
                  found.putIfAbsent(
                      belief,
                      new Mistake(belief, form, situation.travel(), situation.intent(), value)));
    }
  }

  private Scenario scenario(View view, Sight sight, Travel travel, @Nullable ChannelIntent intent) {
    TimeOfDay time = view == View.LIGHT ? TimeOfDay.NIGHT : TimeOfDay.DAY;
    Bearing buoyage =
        travel == Travel.NONE ? null : travel == Travel.WITH ? AHEAD : AHEAD.reciprocal();
    List<LightCharacter> lights = mark.look().lights();
    SightedMark sighted =
        new SightedMark(
            mark.kind(),
            ON_THE_BOW,
            DISTANCE,
            null,
            sight.appearance(lights.isEmpty() ? null : lights.get(0)));
    Situation situation = new Situation(AHEAD, travel, buoyage, time, view, intent, null, null);
    return new Scenario(practice, situation, List.of(sighted));
  }
}
