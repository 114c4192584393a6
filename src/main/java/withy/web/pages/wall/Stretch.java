package withy.web.pages.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import withy.core.Chance;
import withy.core.hydrography.SurveyedWater;
import withy.core.mark.Practice;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Voyage;
import withy.core.waterway.Waterway;

/**
 * A stretch of water as it is shown, and the voyage through it.
 *
 * @param water with all its marks
 */
record Stretch(Shown shown, SurveyedWater survey, Waterway water, Voyage voyage) {
  /** By which what the survey leaves open looks the same each time. */
  private static final long LOOKS = 1;

  static Stretch of(Shown shown, SurveyedWater survey) {
    Practice practice = shown.practice();
    Waterway water = survey.marked(practice, Chance.of(LOOKS, 0));
    return new Stretch(
        shown, survey, water, Voyage.of(water, practice, shown.goal(), shown.inbound()));
  }

  /** Where the voyage is held; the end for steps beyond it. */
  Voyage.Step step() {
    return voyage.steps().get(place());
  }

  int place() {
    return Math.min(shown.step(), voyage.steps().size() - 1);
  }

  int last() {
    return voyage.steps().size() - 1;
  }

  /** The mark that was taken away. */
  Optional<PlacedMark> away() {
    int index = shown.away();
    return index >= 0 && index < water.marks().size()
        ? Optional.of(water.marks().get(index))
        : Optional.empty();
  }

  /** The mark that was taken away while nobody has been told what it was. */
  Optional<PlacedMark> untold() {
    return shown.told() ? Optional.empty() : away();
  }

  /** The water as it is drawn: without the mark that the class is asked about. */
  Waterway drawn() {
    List<PlacedMark> left = new ArrayList<>(water.marks());
    untold().ifPresent(left::remove);
    return new Waterway(water.depths(), water.tide(), water.fairways(), water.dangers(), left);
  }
}
