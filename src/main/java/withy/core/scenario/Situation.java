package withy.core.scenario;

import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.mark.ChannelIntent;
import withy.core.mark.Travel;
import withy.core.mark.Waters;

/**
 * Where the boat is in relation to the buoyage, and what light there is to see by.
 *
 * @param travel none where the conventional direction does not matter
 * @param buoyage the conventional direction; null only where travel is none
 * @param intent the channel wanted at a junction, else null
 * @param setting what the conventional direction comes from; null where it does not matter
 * @param general the general direction along the coast where a local one overrides it, else null
 * @param waters with rules of their own; null for all others
 */
public record Situation(
    Bearing heading,
    Travel travel,
    @Nullable Bearing buoyage,
    TimeOfDay time,
    View view,
    @Nullable ChannelIntent intent,
    @Nullable Setting setting,
    @Nullable Bearing general,
    @Nullable Waters waters) {
  /**
   * @throws IllegalArgumentException if travel is stated without a direction, or a light is seen by
   *     day
   */
  public Situation {
    if (travel != Travel.NONE && buoyage == null) {
      throw new IllegalArgumentException("travel " + travel.id() + " needs a direction of buoyage");
    }
    if ((view == View.LIGHT) != (time == TimeOfDay.NIGHT)) {
      throw new IllegalArgumentException("a " + view.id() + " view does not go with " + time.id());
    }
  }

  /** A situation in waters without rules of their own. */
  public Situation(
      Bearing heading,
      Travel travel,
      @Nullable Bearing buoyage,
      TimeOfDay time,
      View view,
      @Nullable ChannelIntent intent,
      @Nullable Setting setting,
      @Nullable Bearing general) {
    this(heading, travel, buoyage, time, view, intent, setting, general, null);
  }

  /** A boat that steers so where the conventional direction does not matter. */
  public static Situation steering(Bearing heading, TimeOfDay time, View view) {
    return new Situation(heading, Travel.NONE, null, time, view, null, null, null);
  }

  /** The same situation in waters with rules of their own. */
  public Situation in(@Nullable Waters waters) {
    return new Situation(heading, travel, buoyage, time, view, intent, setting, general, waters);
  }
}
