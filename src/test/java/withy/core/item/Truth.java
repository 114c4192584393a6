package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.mark.ChannelIntent;
import withy.core.mark.MarkKind;
import withy.core.mark.Quadrant;
import withy.core.mark.Region;
import withy.core.mark.Travel;
import withy.core.scenario.LightQuestion;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.View;

/**
 * What must hold of every item, with the key worked out anew: sides by the colour of the mark and
 * the sines of angles rather than by the tables that the generator asks.
 */
final class Truth {
  private final Item item;
  private final Scenario scenario;
  private final Situation situation;

  private Truth(Item item) {
    this.item = item;
    this.scenario = item.scenario();
    this.situation = scenario.situation();
  }

  static void holdsOf(Item item) {
    Truth truth = new Truth(item);
    if (item.scenario().lookout() != null) {
      LookoutTruth.holdsOf(item);
      truth.travelLiesWithinItsLimits();
      return;
    }
    if (item.answer() instanceof Assembly) {
      AssemblyTruth.holdsOf(item);
      truth.travelLiesWithinItsLimits();
      return;
    }
    if (item.answer() instanceof Passage) {
      PassageTruth.holdsOf(item);
      truth.travelLiesWithinItsLimits();
      return;
    }
    assertThat(item.key()).as("key of %s", item).isEqualTo(truth.key());
    if (!(item.answer() instanceof Quantity)) {
      truth.optionsAreDistinctAndExplained();
    }
    truth.travelLiesWithinItsLimits();
    if (truth.scenario.sailing() != null) {
      SailedTruth.holdsOf(item, truth.scenario.sailing());
    } else {
      truth.marksLieAhead();
    }
  }

  private void optionsAreDistinctAndExplained() {
    List<String> values = item.options().stream().map(Option::value).toList();
    assertThat(values).doesNotHaveDuplicates().hasSizeBetween(2, 5).contains(item.key());
    for (Option each : item.options()) {
      Misconception belief = each.misconception();
      if (belief != null) {
        assertThat(belief.answer(item.form(), scenario))
            .as("%s of %s", belief, item)
            .contains(each.value());
      }
    }
  }

  private void travelLiesWithinItsLimits() {
    assertThat(situation.buoyage() == null).isEqualTo(situation.travel() == Travel.NONE);
    if (situation.buoyage() != null) {
      double off = situation.buoyage().angleTo(situation.heading());
      assertThat(situation.travel() == Travel.WITH ? off <= 60 : off > 120).isTrue();
    }
  }

  private void marksLieAhead() {
    boolean several = item.form() == Form.NUMBER || item.form() == Form.LEADING;
    for (SightedMark each : scenario.marks()) {
      double off = each.bearing().angleTo(situation.heading());
      assertThat(several ? StrictMath.min(off, 180 - off) : off)
          .isLessThanOrEqualTo(several ? 50 : 25);
      assertThat(each.distance()).isBetween(150.0, 4000.0);
      double steps = each.bearing().degrees() * (several ? 10 : 1);
      assertThat(steps).isCloseTo(StrictMath.rint(steps), offset(1e-9));
      assertThat(each.appearance().light() == null && situation.view() == View.LIGHT).isFalse();
    }
  }

  private String key() {
    return switch (item.form()) {
      case IDENTIFY -> scenario.mark().kind().id();
      case CARDINAL_PASS -> "pass-" + scenario.mark().kind().id().replace("-cardinal", "");
      case LIGHT -> light();
      case DIRECTION -> cosine(situation.heading(), situation.buoyage()) > 0 ? "with" : "against";
      case SIDE, CHANNEL_CHOICE -> side();
      case NUMBER -> ChannelTruth.number(scenario);
      case LEADING -> LeadingTruth.steering(scenario);
      case CLEARANCE -> ClearanceTruth.key(item);
      case CHART_OVER_RULE -> ChartOverRuleTruth.side(item, byColour());
      case ASSEMBLE, PASSAGE -> throw new IllegalStateException("several parts, not one choice");
      case REGULATORY -> AskedTruth.of(scenario.mark().kind().id(), scenario.mark().appearance());
    };
  }

  private String light() {
    List<String> seen = new ArrayList<>();
    scenario.marks().forEach(each -> seen.add(written(each)));
    @Nullable LightQuestion asked = scenario.question();
    if (asked == LightQuestion.MARK) {
      return scenario.mark().kind().id();
    }
    if (asked == LightQuestion.WHICH_LIGHT) {
      assertThat(seen).doesNotHaveDuplicates().hasSizeBetween(3, 4);
      return "at-" + (int) scenario.mark().bearing().degrees();
    }
    item.options().stream()
        .filter(each -> asked == LightQuestion.RHYTHM)
        .forEach(
            each ->
                assertThat(Objects.requireNonNull(each.rhythm()).shortNotation().replace(' ', '_'))
                    .isEqualTo(each.value()));
    return seen.get(0);
  }

  private static String written(SightedMark mark) {
    return Objects.requireNonNull(mark.appearance().light()).shortNotation().replace(' ', '_');
  }

  private String side() {
    MarkKind kind = scenario.mark().kind();
    @Nullable Boolean toPort =
        AskedTruth.toPort(scenario.mark().appearance(), situation.waters(), situation.view());
    if (toPort != null) {
      boolean port = toPort ^ cosine(situation.heading(), situation.buoyage()) < 0;
      return port ? "leave-to-port" : "leave-to-starboard";
    }
    return switch (kind.id()) {
      case "safe-water" ->
          scenario.practice().id().equals("canada") ? "leave-to-port" : "either-side";
      case "emergency-wreck" -> "keep-clear";
      case "north-cardinal", "east-cardinal", "south-cardinal", "west-cardinal" ->
          hand(kind.quadrant());
      default -> byColour();
    };
  }

  /** Red to port in region A; each of region B, travel against and the other channel swaps. */
  private String byColour() {
    boolean port = scenario.mark().appearance().colours().get(0).id().equals("red");
    port ^= scenario.practice().region() == Region.B;
    port ^= cosine(situation.heading(), situation.buoyage()) < 0;
    port ^= situation.intent() == ChannelIntent.SECONDARY;
    return port ? "leave-to-port" : "leave-to-starboard";
  }

  /** The boat north of a mark has it to the south of her, and so on. */
  private String hand(Quadrant safe) {
    double toMark = StrictMath.toRadians(90.0 * safe.ordinal() + 180);
    double heading = StrictMath.toRadians(situation.heading().degrees());
    double across = StrictMath.sin(toMark - heading);
    assertThat(StrictMath.abs(across)).isGreaterThan(StrictMath.sin(StrictMath.toRadians(19.9)));
    return across > 0 ? "leave-to-starboard" : "leave-to-port";
  }

  private static double cosine(Bearing one, Bearing other) {
    return StrictMath.cos(
        StrictMath.toRadians(Objects.requireNonNull(other).degrees() - one.degrees()));
  }

  /** The place of the key among the options. */
  static int placeOfKey(Item item) {
    List<String> values = new ArrayList<>();
    item.options().forEach(each -> values.add(each.value()));
    return values.indexOf(item.key());
  }
}
