package withy.core.hydrography;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;
import withy.core.Term;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.Fairway;
import withy.core.waterway.Keel;
import withy.core.waterway.LeadingLine;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

class WaterGeneratorTest {
  private static final Keel KEEL = Keel.CRUISER;
  private static final int SEEDS = 12;

  /** Metres from the rim of the chart within which a fairway that runs off it ends. */
  private static final double RIM = 60;

  @ParameterizedTest
  @EnumSource(Blueprint.class)
  void rulesAndSoundingsAgree(Blueprint blueprint) {
    for (int seed = 0; seed < SEEDS; seed++) {
      List<Waterway> waters = Waters.of(blueprint, seed, KEEL);
      for (int i = 0; i < waters.size(); i++) {
        Practice practice = Practice.values().get(i);
        WatersAgreement.Found found = WatersAgreement.in(practice, waters.get(i), KEEL);
        assertThat(found.faults()).as("%s %s %s", blueprint, practice, seed).isEmpty();
        assertThat(found.asked()).isPositive();
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Blueprint.class)
  void marksStandApartAreNumberedInStepAndToldByTheirLights(Blueprint blueprint) {
    for (int seed = 0; seed < SEEDS; seed++) {
      List<Waterway> waters = Waters.of(blueprint, seed, KEEL);
      for (int i = 0; i < waters.size(); i++) {
        Practice practice = Practice.values().get(i);
        assertThat(WatersMarked.faults(practice, waters.get(i)))
            .as("%s %s %s", blueprint, practice, seed)
            .isEmpty();
      }
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/withy/regressions.csv", numLinesToSkip = 1)
  void everyFaultEverFoundStaysCured(String blueprint, String practice, long seed, String what) {
    Blueprint kind = Term.parse(Blueprint.class, blueprint);
    Practice which = Practice.parse(practice);
    Waterway water = WaterGenerator.water(which, kind, KEEL, Waters.chance(kind, seed));
    assertThat(WatersAgreement.in(which, water, KEEL).faults()).as(what).isEmpty();
    assertThat(WatersMarked.faults(which, water)).as(what).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Blueprint.class)
  void practicesShareTheSameWaterUnderOneSeed(Blueprint blueprint) {
    List<Waterway> waters = Waters.of(blueprint, 5, KEEL);
    for (int i = 0; i < waters.size(); i++) {
      Practice practice = Practice.values().get(i);
      assertThat(WaterGenerator.water(practice, blueprint, KEEL, Waters.chance(blueprint, 5)))
          .isEqualTo(waters.get(i));
      assertThat(waters.get(i).depths()).isEqualTo(waters.get(0).depths());
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Blueprint.class,
      names = {"RIVER", "ESTUARY", "FORK", "CONVERGING", "COASTAL_PASSAGE", "HARBOUR_ENTRANCE"})
  void fairwaysRunOffTheChartSaveIntoAHarbour(Blueprint blueprint) {
    for (int seed = 0; seed < SEEDS; seed++) {
      Waterway water = water(blueprint, seed);
      Fairway main = water.fairways().get(0);
      assertThat(fromTheRim(water, main.line().start())).isLessThan(RIM);
      if (blueprint != Blueprint.HARBOUR_ENTRANCE) {
        assertThat(fromTheRim(water, main.line().end())).isLessThan(RIM);
      }
    }
  }

  @Test
  void aChannelPartsFromAnotherAtAPreferredChannelMarkAndEndsAtTheRim() {
    for (int seed = 0; seed < SEEDS; seed++) {
      Waterway water = water(Blueprint.FORK, seed);
      Fairway second = water.fairway("secondary").orElseThrow();
      assertThat(fromTheRim(water, second.line().end())).isLessThan(RIM);
      assertThat(water.fairways().get(0).contains(second.line().start())).isTrue();
      assertThat(water.marks())
          .filteredOn(each -> each.kind().id().startsWith("preferred-channel"))
          .singleElement()
          .satisfies(mark -> assertThat(KEEL.isSafe(water.water(mark.position()))).isFalse());
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Blueprint.class,
      names = {"ESTUARY", "HARBOUR_ENTRANCE"})
  void aLeadingLineLeadsInFromASafeWaterMark(Blueprint blueprint) {
    for (int seed = 0; seed < SEEDS; seed++) {
      Waterway water = water(blueprint, seed);
      LeadingLine line = water.leadingLines().get(0);
      assertThat(only(water, MarkKind.LEADING_FRONT).position()).isEqualTo(line.front());
      assertThat(only(water, MarkKind.LEADING_REAR).position()).isEqualTo(line.rear());
      for (Position ashore : List.of(line.front(), line.rear())) {
        assertThat(water.depths().depth(ashore)).isLessThan(-2.5);
      }
      Fairway main = water.fairways().get(0);
      for (Position on : List.of(line.from(), line.until())) {
        assertThat(main.line().foot(on).distance()).isCloseTo(0, within(main.width() / 6));
      }
    }
    assertThat(
            IntStream.range(0, SEEDS)
                .mapToObj(seed -> water(blueprint, seed))
                .filter(water -> water.marks().stream().anyMatch(WaterGeneratorTest::isSafeWater)))
        .hasSizeGreaterThan(SEEDS / 2);
  }

  @Test
  void aBarLiesAcrossTheMouthOfAnEstuaryAndIsShallowerThanTheChannelOnEitherSide() {
    for (int seed = 0; seed < SEEDS; seed++) {
      Waterway water = water(Blueprint.ESTUARY, seed);
      Danger bar = water.dangers().get(0);
      assertThat(bar.kind()).isEqualTo(DangerKind.BAR);
      Fairway main = water.fairways().get(0);
      double along = main.line().foot(bar.at()).along();
      double crest = water.depths().depth(bar.at());
      assertThat(crest).isCloseTo(bar.leastDepth(), within(0.15));
      assertThat(water.depths().depth(main.line().at(along - 250))).isGreaterThan(crest + 0.5);
      assertThat(water.depths().depth(main.line().at(along + 220))).isGreaterThan(crest + 0.5);
    }
  }

  @Test
  void aBendIsDeeperOnItsOuterSide() {
    Channel channel =
        new Channel(
            "main",
            Polyline.of(new Position(100, 100), new Position(1000, 1000), new Position(1900, 100))
                .rounded(),
            100,
            5,
            2.5);
    double apex = channel.course().length() / 2;
    Position outer = channel.course().beside(apex, -25);
    Position inner = channel.course().beside(apex, 25);
    assertThat(channel.carved(channel.foot(outer), 0))
        .isGreaterThan(channel.carved(channel.foot(inner), 0) + 1);
  }

  private static Waterway water(Blueprint blueprint, int seed) {
    return WaterGenerator.water(Practice.IALA_A, blueprint, KEEL, Waters.chance(blueprint, seed));
  }

  private static PlacedMark only(Waterway water, MarkKind kind) {
    List<PlacedMark> all = water.marks().stream().filter(each -> each.kind().equals(kind)).toList();
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  private static boolean isSafeWater(PlacedMark mark) {
    return mark.kind().equals(MarkKind.SAFE_WATER);
  }

  private static double fromTheRim(Waterway water, Position place) {
    double east = water.depths().width() - place.x();
    double north = water.depths().height() - place.y();
    return Math.min(Math.min(place.x(), place.y()), Math.min(east, north));
  }
}
