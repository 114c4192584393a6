package withy.standard.marks;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.core.mark.Side.EITHER_SIDE;
import static withy.core.mark.Side.KEEP_CLEAR;
import static withy.core.mark.Side.LEAVE_TO_PORT;
import static withy.core.mark.Side.LEAVE_TO_STARBOARD;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.geometry.Bearing;
import withy.core.mark.BodyShape;
import withy.core.mark.CardinalRules;
import withy.core.mark.ChannelIntent;
import withy.core.mark.MarkRule;
import withy.core.mark.Practice;
import withy.core.mark.Quadrant;
import withy.core.mark.Side;
import withy.core.mark.SideRules;
import withy.core.mark.Travel;
import withy.standard.Covers;

/** The sides of the twelve kinds, as the table of marks has them. */
class SideTableTest {
  private static final String WITH = "leave_mark_when_heading_with_buoyage";
  private static final String AGAINST = "leave_mark_when_heading_against";
  private static final Pattern BY_CHANNEL =
      Pattern.compile(
          "(port|starboard) for the preferred channel; (port|starboard) for the secondary.*");
  private static final Pattern QUADRANT =
      Pattern.compile(".*on the (\\w+) side of the mark.*true (\\d{3})-(\\d{3}).*");

  static List<MarkRow> laterals() {
    return MarkRow.all().stream().filter(row -> row.kind().isLateral()).toList();
  }

  static List<MarkRow> junctions() {
    return MarkRow.all().stream().filter(row -> row.kind().isPreferredChannel()).toList();
  }

  static List<MarkRow> cardinals() {
    return MarkRow.all().stream().filter(row -> row.kind().isCardinal()).toList();
  }

  static List<MarkRow> others() {
    return MarkRow.all().stream()
        .filter(
            row ->
                !row.kind().isLateral()
                    && !row.kind().isPreferredChannel()
                    && !row.kind().isCardinal())
        .toList();
  }

  @ParameterizedTest
  @MethodSource("laterals")
  @Covers({MarkRule.LATERAL_SIDE_WITH_BUOYAGE, MarkRule.SIDES_SWAP_AGAINST_BUOYAGE})
  void leavesLateralMarksOnTheirHand(MarkRow row) {
    assertThat(side(row, Travel.WITH, null)).contains(hand(row.cell(WITH)));
    assertThat(side(row, Travel.AGAINST, null)).contains(hand(row.cell(AGAINST)));
    assertThat(side(row, Travel.NONE, null)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("laterals")
  @Covers({MarkRule.LATERAL_COLOUR_BY_REGION, MarkRule.SHAPE_KEEPS_ITS_SIDE})
  void tellsTheSideFromColourShapeAndTopmarkAlike(MarkRow row) {
    for (Travel travel : Travel.values()) {
      Optional<Side> side = side(row, travel, null);
      assertThat(SideRules.byColour(row.region(), row.look().colours().get(0), travel))
          .isEqualTo(side);
      assertThat(SideRules.byShape(row.look().bodies().get(0), travel)).isEqualTo(side);
      assertThat(SideRules.byTopmark(row.look().topmark().shape(), travel)).isEqualTo(side);
      assertThat(SideRules.byShape(BodyShape.PILLAR, travel)).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("laterals")
  @Covers(MarkRule.LATERAL_SIDE_WITH_BUOYAGE)
  void hasTheChannelAcrossTheBoatFromTheMark(MarkRow row) {
    Side side = side(row, Travel.WITH, null).orElseThrow();
    assertThat(row.cell("safe_water_rule"))
        .startsWith("channel lies on the " + word(side.opposite()) + " side of the mark");
  }

  @ParameterizedTest
  @MethodSource("junctions")
  @Covers({MarkRule.PREFERRED_CHANNEL_BODY_COLOUR, MarkRule.SECONDARY_CHANNEL_OPPOSITE})
  void leavesPreferredChannelMarksByTheChannelWanted(MarkRow row) {
    Matcher with = matched(BY_CHANNEL, row.cell(WITH));
    Matcher against = matched(BY_CHANNEL, row.cell(AGAINST));
    assertThat(side(row, Travel.WITH, ChannelIntent.PREFERRED)).contains(hand(with.group(1)));
    assertThat(side(row, Travel.WITH, ChannelIntent.SECONDARY)).contains(hand(with.group(2)));
    assertThat(side(row, Travel.AGAINST, ChannelIntent.PREFERRED)).contains(hand(against.group(1)));
    assertThat(side(row, Travel.AGAINST, ChannelIntent.SECONDARY)).contains(hand(against.group(2)));
    assertThat(side(row, Travel.NONE, ChannelIntent.PREFERRED)).isEmpty();
    assertThat(side(row, Travel.WITH, null)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("junctions")
  @Covers(MarkRule.PREFERRED_CHANNEL_BODY_COLOUR)
  void readsThePreferredChannelFromTheBodyColour(MarkRow row) {
    for (Travel travel : Travel.values()) {
      assertThat(SideRules.byColour(row.region(), row.look().colours().get(0), travel))
          .isEqualTo(side(row, travel, ChannelIntent.PREFERRED));
    }
    Side side = side(row, Travel.WITH, ChannelIntent.PREFERRED).orElseThrow();
    assertThat(row.cell("safe_water_rule"))
        .startsWith("preferred (main) channel lies to " + word(side.opposite()));
  }

  @ParameterizedTest
  @MethodSource("cardinals")
  @Covers({MarkRule.CARDINAL_PASS_NAMED_SIDE, MarkRule.CARDINAL_QUADRANTS})
  void hasTheSafeWaterOfCardinalMarksInTheNamedQuadrant(MarkRow row) {
    Matcher quadrant = matched(QUADRANT, row.cell("safe_water_rule"));
    Quadrant named = CardinalRules.pass(row.kind());
    assertThat(named.name()).isEqualTo(quadrant.group(1));
    Bearing first = new Bearing(Integer.parseInt(quadrant.group(2)));
    Bearing last = new Bearing(Integer.parseInt(quadrant.group(3)));
    for (int degrees = 0; degrees < 360; degrees++) {
      Bearing fromMark = new Bearing(degrees + 0.5);
      boolean within = first.clockwiseTo(fromMark) < first.clockwiseTo(last);
      assertThat(CardinalRules.isSafe(named, fromMark)).as("%s", fromMark).isEqualTo(within);
    }
    assertThat(row.cell(WITH)).startsWith("n/a");
    assertThat(side(row, Travel.WITH, null)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("others")
  @Covers({
    MarkRule.ISOLATED_DANGER_WATER_ALL_ROUND,
    MarkRule.SAFE_WATER_EITHER_SIDE,
    MarkRule.SPECIAL_NO_SIDE,
    MarkRule.WRECK_KEEP_CLEAR
  })
  void leavesTheOthersAsTheyAskWhicheverWayTheBoatTravels(MarkRow row) {
    String rule = row.cell(WITH).replaceFirst("^IALA: ", "").split("[;,:/] ?")[0].strip();
    Optional<Side> expected =
        switch (rule) {
          case "either side" -> Optional.of(EITHER_SIDE);
          case "keep clear" -> Optional.of(KEEP_CLEAR);
          case "no lateral meaning" -> Optional.empty();
          default -> throw new AssertionError(rule);
        };
    for (Travel travel : Travel.values()) {
      assertThat(side(row, travel, null)).isEqualTo(expected);
    }
    assertThat(row.cell(AGAINST)).containsAnyOf("same", "either side");
    assertThat(row.cell("safe_water_rule").contains("navigable water all round"))
        .isEqualTo(expected.equals(Optional.of(EITHER_SIDE)));
  }

  @ParameterizedTest
  @MethodSource("others")
  @Covers(MarkRule.SAFE_WATER_KEPT_TO_PORT)
  void keepsTheFairwayBuoyToPortInCanadaBothWays(MarkRow row) {
    boolean keptToPort =
        row.cell(WITH).contains("Canada: keep it to PORT in both directions")
            && row.cell(AGAINST).contains("Canada: keep it to PORT");
    for (Travel travel : List.of(Travel.WITH, Travel.AGAINST)) {
      assertThat(
              SideRules.side(Practice.CANADA, row.kind(), travel, null)
                  .filter(LEAVE_TO_PORT::equals)
                  .isPresent())
          .isEqualTo(keptToPort);
      assertThat(SideRules.side(Practice.USA, row.kind(), travel, null))
          .isEqualTo(side(row, travel, null));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "SOUTH, 90, LEAVE_TO_PORT",
    "EAST, 180, LEAVE_TO_STARBOARD",
    "NORTH, 90, LEAVE_TO_STARBOARD",
    "WEST, 0, LEAVE_TO_STARBOARD"
  })
  @Covers(MarkRule.CARDINAL_HAND_FROM_HEADING)
  void findsTheHandOfWorkedCases(Quadrant safe, double heading, Side expected) {
    assertThat(CardinalRules.hand(safe, new Bearing(heading))).contains(expected);
  }

  /**
   * From the safe side Q the mark bears Q + 180; to the right of the bow it is left to starboard.
   */
  @ParameterizedTest
  @CsvSource({"NORTH, 0", "EAST, 90", "SOUTH, 180", "WEST, 270"})
  @Covers(MarkRule.CARDINAL_HAND_FROM_HEADING)
  void findsTheHandForEveryHeading(Quadrant safe, int middle) {
    for (int heading = 0; heading < 360; heading++) {
      int relative = Math.floorMod(middle + 180 - heading, 360);
      boolean none = relative < 20 || (relative > 160 && relative < 200) || relative > 340;
      Side hand = relative < 180 ? LEAVE_TO_STARBOARD : LEAVE_TO_PORT;
      assertThat(CardinalRules.hand(safe, new Bearing(heading)))
          .as("heading %d", heading)
          .isEqualTo(none ? Optional.empty() : Optional.of(hand));
    }
  }

  private static Optional<Side> side(MarkRow row, Travel travel, ChannelIntent intent) {
    return SideRules.side(row.practice(), row.kind(), travel, intent);
  }

  private static Matcher matched(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    assertThat(matcher.matches()).as(text).isTrue();
    return matcher;
  }

  private static Side hand(String word) {
    return switch (word) {
      case "port" -> LEAVE_TO_PORT;
      case "starboard" -> LEAVE_TO_STARBOARD;
      default -> throw new AssertionError(word);
    };
  }

  private static String word(Side side) {
    return side == LEAVE_TO_PORT ? "port" : "starboard";
  }
}
