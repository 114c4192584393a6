package withy.core.item;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.geometry.Bearing;
import withy.core.mark.Colour;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkingRules;
import withy.core.mark.Region;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.View;

/** A straight channel with numbered marks before a boat that enters or leaves it. */
final class ChannelLayout {
  /** What marks a channel has; one hand or few marks do not show which way the numbers grow. */
  private enum Plan {
    ONE_HAND,
    THREE_MARKS,
    STAGGERED,
    PAIRS,
    PAIRS_AND_SINGLES
  }

  private record Numbered(Colour colour, int number, int station) {}

  private static final List<Plan> PLANS = List.of(Plan.values());

  private final Task task;
  private final Chance chance;
  private final Travel travel;
  private final Bearing buoyage;

  private ChannelLayout(Task task) {
    this.task = task;
    this.chance = task.chance();
    this.travel = chance.oneIn(2) ? Travel.WITH : Travel.AGAINST;
    this.buoyage = Drawn.bearing(chance);
  }

  /**
   * A channel with one number left out by chance; null where the others do not tell it. The marks
   * after the one that is asked about stand in the order in which the boat meets them.
   */
  static @Nullable Scenario drawn(Task task) {
    return new ChannelLayout(task).scenario();
  }

  private @Nullable Scenario scenario() {
    List<Numbered> numbered = new ArrayList<>(numbered(chance.pick(PLANS)));
    if (!growing(numbered)) {
      return null;
    }
    if (travel == Travel.AGAINST) {
      Collections.reverse(numbered);
    }
    Bearing heading = ahead().plus(chance.between(-4, 4));
    Situation situation =
        new Situation(heading, travel, buoyage, task.time(), View.NEAR, null, null, null);
    int asked = chance.below(numbered.size());
    Scenario scenario = new Scenario(task.practice(), situation, sighted(numbered, asked));
    @Nullable Integer told = NumberedChannel.of(scenario).number();
    return told != null && told == numbered.get(asked).number() ? scenario : null;
  }

  private Bearing ahead() {
    return travel == Travel.WITH ? buoyage : buoyage.reciprocal();
  }

  /** The marks from seaward inward. */
  private List<Numbered> numbered(Plan plan) {
    return switch (plan) {
      case ONE_HAND -> {
        Colour colour = either();
        yield staggered(List.of(colour, colour));
      }
      case THREE_MARKS -> {
        Colour colour = either();
        yield staggered(chance.shuffled(List.of(colour, colour, other(colour))));
      }
      case STAGGERED -> staggered(colours(chance.between(4, 5)));
      case PAIRS -> paired(chance.between(2, 3), false);
      case PAIRS_AND_SINGLES -> paired(chance.between(3, 4), true);
    };
  }

  private List<Colour> colours(int count) {
    List<Colour> colours = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      colours.add(either());
    }
    return colours;
  }

  private Colour either() {
    return chance.oneIn(2) ? Colour.RED : Colour.GREEN;
  }

  private static Colour other(Colour colour) {
    return colour == Colour.RED ? Colour.GREEN : Colour.RED;
  }

  /** Marks one after the other, each hand counted by itself; the later one begins in step. */
  private List<Numbered> staggered(List<Colour> colours) {
    int last = chance.between(1, 12);
    @Nullable Integer red = null;
    @Nullable Integer green = null;
    List<Numbered> marks = new ArrayList<>(colours.size());
    for (Colour each : colours) {
      @Nullable Integer own = each == Colour.RED ? red : green;
      last = own == null ? next(last, each) : own + 2;
      red = each == Colour.RED ? Integer.valueOf(last) : red;
      green = each == Colour.GREEN ? Integer.valueOf(last) : green;
      marks.add(new Numbered(each, last, marks.size()));
    }
    return marks;
  }

  /** The next number after one that a colour may bear. */
  private static int next(int number, Colour colour) {
    boolean fits = (number + 1) % 2 == 0 == (colour == Colour.RED);
    return number + (fits ? 1 : 2);
  }

  /** Where one hand gets ahead of the other, a channel would leave out numbers: not asked about. */
  private static boolean growing(List<Numbered> marks) {
    for (int i = 1; i < marks.size(); i++) {
      if (marks.get(i).number() <= marks.get(i - 1).number()) {
        return false;
      }
    }
    return true;
  }

  /** Stations with both marks or, among them, one alone: its pair's number is then left out. */
  private List<Numbered> paired(int stations, boolean singles) {
    int first = chance.between(1, 5);
    List<Numbered> marks = new ArrayList<>(2 * stations);
    for (int i = 0; i < stations; i++) {
      @Nullable Colour alone = singles && chance.oneIn(2) ? either() : null;
      int even = 2 * (first + i);
      if (alone != Colour.RED) {
        marks.add(new Numbered(Colour.GREEN, even - 1, i));
      }
      if (alone != Colour.GREEN) {
        marks.add(new Numbered(Colour.RED, even, i));
      }
    }
    return marks;
  }

  private List<SightedMark> sighted(List<Numbered> numbered, int asked) {
    int first = chance.between(20, 30) * 10;
    int spacing = chance.between(18, 30) * 10;
    int halfWidth = chance.between(30, 50);
    int nearest = numbered.get(0).station();
    List<SightedMark> marks = new ArrayList<>(numbered.size());
    for (int i = 0; i < numbered.size(); i++) {
      Numbered each = numbered.get(i);
      int along = first + spacing * StrictMath.abs(each.station() - nearest);
      SightedMark mark = sighted(each, along, halfWidth, i == asked);
      marks.add(i == asked ? 0 : marks.size(), mark);
    }
    return marks;
  }

  private SightedMark sighted(Numbered numbered, int along, int halfWidth, boolean asked) {
    Region region = task.practice().region();
    boolean port = numbered.colour() == region.portHand();
    MarkKind kind = port ? MarkKind.PORT_HAND : MarkKind.STARBOARD_HAND;
    double across = port == (travel == Travel.WITH) ? -halfWidth : halfWidth;
    double off = StrictMath.toDegrees(StrictMath.atan2(across, along));
    return new SightedMark(
        kind,
        Drawn.tenths(ahead().plus(off)),
        Math.round(StrictMath.hypot(along, across)),
        asked ? null : Integer.toString(numbered.number()),
        Drawn.appearance(task, MarkingRules.mark(task.practice(), kind), View.NEAR));
  }
}
