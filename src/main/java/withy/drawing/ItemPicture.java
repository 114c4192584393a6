package withy.drawing;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.item.Assembly;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.Passage;
import withy.core.scenario.LightQuestion;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.View;

/**
 * The pictures of an item.
 *
 * <p>A view of a light has no view box and keeps the light at its size in CSS pixels; give it the
 * proportions of its width and height.
 *
 * @param view what is seen: the mark, the mark over the bow, a light, leading marks, or a stretch
 *     of water from above
 * @param plan the same from above, north up; null where there is nothing to add
 */
public record ItemPicture(Svg view, @Nullable Svg plan) {
  /** Degrees on either side of the bow in which several lights are shown. */
  private static final double ABEAM = 30;

  /** Forms that ask for the mark itself, not for the way past it. */
  private static final Set<Form> SHOWN_ALONE =
      EnumSet.of(Form.IDENTIFY, Form.LIGHT, Form.REGULATORY);

  /** What the learner sees before the answer; nothing in it tells the key. */
  public static ItemPicture question(Item item, Lettering lettering) {
    return drawn(item, null, null, lettering, false);
  }

  /** The question with English lettering. */
  public static ItemPicture question(Item item) {
    return question(item, Lettering.ENGLISH);
  }

  /**
   * What the learner sees after the answer: the plan with the safe way past the mark, and dashed
   * the way of a wrong answer.
   *
   * @param chosen the value of the option chosen; null for "not sure"
   */
  public static ItemPicture answered(Item item, @Nullable String chosen, Lettering lettering) {
    String wrong = item.key().equals(chosen) ? null : chosen;
    return drawn(item, item.key(), wrong, lettering, true);
  }

  /** The answered item with English lettering. */
  public static ItemPicture answered(Item item, @Nullable String chosen) {
    return answered(item, chosen, Lettering.ENGLISH);
  }

  private static ItemPicture drawn(
      Item item,
      @Nullable String key,
      @Nullable String wrong,
      Lettering lettering,
      boolean answered) {
    Scenario scenario = item.scenario();
    Situation situation = scenario.situation();
    @Nullable Sailing water = scenario.sailing();
    if (water != null && ChartedQuestion.isAsked(item.form())) {
      Svg plan = answered ? ChartedQuestion.answered(item, water, wrong, lettering) : null;
      return new ItemPicture(ChartedQuestion.question(item, water, lettering), plan);
    }
    if (item.answer() instanceof Assembly) {
      return new ItemPicture(MarkDrawing.openWater(), null);
    }
    if (item.answer() instanceof Passage passage && scenario.sailing() != null) {
      return passage(item, passage, scenario.sailing(), wrong, lettering, answered);
    }
    if (scenario.lookout() != null) {
      return new ItemPicture(LookoutPicture.of(scenario.lookout(), lettering, answered), null);
    }
    if (item.form() == Form.DIRECTION || scenario.marks().isEmpty()) {
      return new ItemPicture(WaterPlan.of(situation, lettering, answered), null);
    }
    if (item.form() == Form.NUMBER) {
      return new ItemPicture(ChannelPlan.of(scenario, key, lettering), null);
    }
    if (item.form() == Form.LEADING) {
      Svg plan = answered ? LeadingPlan.of(scenario, wrong, lettering) : null;
      return new ItemPicture(LeadingScene.of(scenario), plan);
    }
    if (scenario.question() == LightQuestion.RHYTHM && !answered) {
      return new ItemPicture(NightLights.dark(), null);
    }
    if (scenario.question() == LightQuestion.WHICH_LIGHT) {
      return new ItemPicture(inSight(scenario, lettering), null);
    }
    SightedMark mark = scenario.mark();
    if (SHOWN_ALONE.contains(item.form())) {
      return new ItemPicture(alone(mark, situation.view(), lettering, answered), null);
    }
    Sailing sailing = scenario.sailing();
    Svg plan =
        sailing != null && answered
            ? SailedChart.of(item, sailing, wrong, lettering)
            : PassingPlan.of(situation, mark, key, wrong, lettering);
    return new ItemPicture(BowView.of(situation, mark, lettering, answered), plan);
  }

  private static ItemPicture passage(
      Item item,
      Passage passage,
      Sailing sailing,
      @Nullable String wrong,
      Lettering lettering,
      boolean answered) {
    Svg plan = answered ? PassageChart.answered(item, passage, sailing, wrong, lettering) : null;
    return new ItemPicture(PassageChart.asked(item, passage, sailing, lettering), plan);
  }

  /** The lights ahead from a little outside the outermost ones. */
  private static Svg inSight(Scenario scenario, Lettering lettering) {
    List<NightLights.Sighted> lights =
        scenario.marks().stream()
            .map(each -> new NightLights.Sighted(each.bearing(), each.light().timeline()))
            .toList();
    Bearing ahead = scenario.situation().heading();
    return NightLights.of(lights, ahead.plus(-ABEAM), ahead.plus(ABEAM), lettering);
  }

  private static Svg alone(SightedMark mark, View view, Lettering lettering, boolean letters) {
    return switch (view) {
      case NEAR -> MarkDrawing.near(mark.appearance(), mark.label());
      case DISTANT -> MarkDrawing.distant(mark.appearance());
      case LIGHT -> MarkDrawing.night(mark.light().timeline(), lettering, letters);
    };
  }
}
