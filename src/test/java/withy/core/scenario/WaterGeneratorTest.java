package withy.core.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.mark.Side;
import withy.core.mark.SideRules;
import withy.core.mark.Travel;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.Fairway;
import withy.core.waterway.Keel;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Sailed;
import withy.core.waterway.Waterway;
import withy.core.waterway.WayPast;

class WaterGeneratorTest {
  private static final Keel KEEL = new Keel(1.4, 0.5);
  private static final int SEEDS = Integer.getInteger("withy.waters", 60);

  @ParameterizedTest
  @EnumSource(Blueprint.class)
  void rulesAndSoundingsAgree(Blueprint blueprint) {
    int asked = 0;
    for (Practice practice : Practice.values()) {
      for (int seed = 0; seed < SEEDS; seed++) {
        Waterway water =
            WaterGenerator.water(practice, blueprint, KEEL, Chance.of(seed, blueprint.ordinal()));
        String where = blueprint + " " + practice + " " + seed;
        for (PlacedMark mark : water.marks()) {
          asked += agree(practice, water, mark, where);
        }
        assertThat(water.marks()).as(where).isNotEmpty();
      }
    }
    assertThat(asked).isGreaterThan(SEEDS);
  }

  private static int agree(Practice practice, Waterway water, PlacedMark mark, String where) {
    if (mark.kind().isLateral()) {
      Fairway fairway = water.fairway(String.valueOf(mark.serves())).orElseThrow();
      for (Travel travel : new Travel[] {Travel.WITH, Travel.AGAINST}) {
        Side right = SideRules.side(practice, mark.kind(), travel, null).orElseThrow();
        Polyline safe = WayPast.lateral(fairway, mark, travel, right);
        Polyline wrong = WayPast.lateral(fairway, mark, travel, right.opposite());
        keeps(water.sail(safe, KEEL), where + " " + mark);
        grounds(water.sail(wrong, KEEL), where + " " + mark);
      }
      return 1;
    }
    if (mark.kind().isCardinal()) {
      Danger danger = water.dangers().get(0);
      Bearing across = mark.kind().quadrant().middle().plus(90);
      keeps(
          water.sail(WayPast.cardinal(danger, mark, mark.kind().quadrant(), across), KEEL), where);
      grounds(
          water.sail(
              WayPast.cardinal(danger, mark, mark.kind().quadrant().opposite(), across), KEEL),
          where);
      return 1;
    }
    if (mark.kind().equals(MarkKind.ISOLATED_DANGER)) {
      assertThat(water.dangers().get(0).kind()).isNotEqualTo(DangerKind.BAR);
      assertThat(KEEL.grounds(water.water(mark.position()))).as(where).isTrue();
      return 1;
    }
    return 0;
  }

  private static void keeps(Sailed sailed, String where) {
    assertThat(sailed.leastDepth())
        .as("%s at %s", where, sailed.where())
        .isGreaterThanOrEqualTo(KEEL.draught() + KEEL.margin());
  }

  private static void grounds(Sailed sailed, String where) {
    assertThat(sailed.leastDepth()).as(where).isLessThan(KEEL.draught());
  }
}
