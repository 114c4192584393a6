package withy.core.hydrography;

import java.util.Optional;
import withy.core.geometry.Position;
import withy.core.mark.Passing;
import withy.core.waterway.Fairway;

/**
 * The mark where a secondary channel leaves the main one, on the tip of the ground between them.
 */
final class JunctionMark {
  /** Metres behind the parting between which the tip is looked for. */
  private static final double NEAREST = 40;

  private static final double FARTHEST = 460;

  private final Marking marking;
  private final Fairway main;
  private final Fairway second;

  private JunctionMark(Marking marking, Fairway second) {
    this.marking = marking;
    this.main = marking.water().fairways().get(0);
    this.second = second;
  }

  /** The mark; empty in a water whose main channel does not divide. */
  static Optional<Planned> of(Marking marking) {
    return marking
        .water()
        .fairway("secondary")
        .flatMap(second -> new JunctionMark(marking, second).planned());
  }

  private Optional<Planned> planned() {
    double parting = main.line().foot(second.line().start()).along();
    for (double gone = NEAREST; gone < FARTHEST; gone += 10) {
      Position tip = main.line().at(parting + gone).towards(second.line().at(gone), 0.5);
      if (isTip(tip)) {
        boolean starboard = main.line().foot(tip).off() > 0;
        Passing passing = starboard ? Passing.PREFERRED_TO_STARBOARD : Passing.PREFERRED_TO_PORT;
        return marking.passed(passing, false).map(mark -> new Planned(mark, tip, main.id()));
      }
    }
    return Optional.empty();
  }

  private boolean isTip(Position place) {
    return !main.contains(place)
        && !second.contains(place)
        && !marking.keel().isSafe(marking.water().water(place));
  }
}
