package withy.standard.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.Term;
import withy.core.light.LightCharacter;
import withy.core.mark.BodyShape;
import withy.core.mark.ChannelIntent;
import withy.core.mark.Colour;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkRule;
import withy.core.mark.MarkingRules;
import withy.core.mark.NumberRules;
import withy.core.mark.Parity;
import withy.core.mark.Practice;
import withy.core.mark.Recognition;
import withy.core.mark.Side;
import withy.core.mark.SideRules;
import withy.core.mark.Travel;
import withy.standard.Covers;

/** Canada (TP 968) and the USA (33 CFR 62) where they speak of the twelve kinds. */
class NationalMarksTest {
  private static final Map<String, List<MarkKind>> CANADIAN =
      Map.ofEntries(
          Map.entry("port hand buoy", List.of(MarkKind.PORT_HAND)),
          Map.entry("starboard hand buoy", List.of(MarkKind.STARBOARD_HAND)),
          Map.entry("port bifurcation buoy", List.of(MarkKind.PREFERRED_CHANNEL_TO_STARBOARD)),
          Map.entry("starboard bifurcation buoy", List.of(MarkKind.PREFERRED_CHANNEL_TO_PORT)),
          Map.entry("fairway buoy", List.of(MarkKind.SAFE_WATER)),
          Map.entry("isolated danger buoy", List.of(MarkKind.ISOLATED_DANGER)),
          Map.entry("north cardinal buoy", List.of(MarkKind.NORTH_CARDINAL)),
          Map.entry("east cardinal buoy", List.of(MarkKind.EAST_CARDINAL)),
          Map.entry("south cardinal buoy", List.of(MarkKind.SOUTH_CARDINAL)),
          Map.entry("west cardinal buoy", List.of(MarkKind.WEST_CARDINAL)),
          Map.entry("cautionary buoy", List.of(MarkKind.SPECIAL)),
          Map.entry("scientific (ODAS) buoy", List.of(MarkKind.SPECIAL)));

  private static final Map<String, List<MarkKind>> AMERICAN =
      Map.of(
          "port side mark", List.of(MarkKind.PORT_HAND),
          "starboard side mark", List.of(MarkKind.STARBOARD_HAND),
          "preferred channel mark",
              List.of(MarkKind.PREFERRED_CHANNEL_TO_STARBOARD, MarkKind.PREFERRED_CHANNEL_TO_PORT),
          "safe water mark", List.of(MarkKind.SAFE_WATER),
          "isolated danger mark", List.of(MarkKind.ISOLATED_DANGER),
          "special mark", List.of(MarkKind.SPECIAL));

  private static final Pattern LIGHT =
      Pattern.compile(
          "(Mo\\(A\\)|LFl|Fl(?:\\([0-9+]+\\))?|V?Q(?:\\(\\d\\)(?:\\+LFl)?)?) ?([WRGY]) ([0-9.]+)s");

  /** A row with one of the kinds that it speaks of. */
  record Row(Practice practice, MarkKind kind, CSVRecord cells) {
    String cell(String column) {
      return cells.get(column);
    }

    @Override
    public String toString() {
      return practice.id() + " " + kind.id() + " by " + cell("item");
    }
  }

  static List<Row> rows() {
    return Tables.of("national_marks.csv").stream()
        .flatMap(
            cells ->
                cells.get("country").equals("Canada")
                    ? rows(Practice.CANADA, CANADIAN, cells)
                    : rows(Practice.USA, AMERICAN, cells))
        .toList();
  }

  private static Stream<Row> rows(
      Practice practice, Map<String, List<MarkKind>> kinds, CSVRecord cells) {
    return kinds.getOrDefault(cells.get("item"), List.of()).stream()
        .map(kind -> new Row(practice, kind, cells));
  }

  @Test
  @Covers(MarkRule.NO_CARDINAL_MARKS_IN_USA)
  void hasTheKindsThatEachCountryLists() {
    for (Practice practice : List.of(Practice.CANADA, Practice.USA)) {
      List<MarkKind> listed =
          rows().stream().filter(row -> row.practice() == practice).map(Row::kind).toList();
      List<MarkKind> ofTheSystem =
          MarkingRules.kinds(practice).stream().filter(Practice.IALA_B.kinds()::contains).toList();
      assertThat(ofTheSystem)
          .filteredOn(kind -> !kind.isLeading())
          .as("the emergency wreck mark is the IMO's, for all")
          .containsExactlyInAnyOrderElementsOf(
              Stream.concat(listed.stream(), Stream.of(MarkKind.EMERGENCY_WRECK))
                  .distinct()
                  .toList());
    }
    assertThat(MarkingRules.kinds(Practice.USA)).noneMatch(MarkKind::isCardinal);
  }

  @ParameterizedTest
  @MethodSource("rows")
  @Covers({MarkRule.LATERAL_COLOUR_BY_REGION, MarkRule.PREFERRED_CHANNEL_BODY_COLOUR})
  void wearsTheColoursListed(Row row) {
    List<Colour> look = MarkingRules.look(row.practice(), row.kind()).colours();
    if (row.cell("item").equals("preferred channel mark")) {
      assertThat(row.cell("colours_top_to_bottom")).startsWith("red & green horizontal bands; TOP");
      assertThat(row.cell("meaning_and_passing_rule"))
          .contains("top band green: treat as port mark", "top red: as starboard mark");
      boolean portHand = row.kind() == MarkKind.PREFERRED_CHANNEL_TO_STARBOARD;
      assertThat(look.get(0)).isEqualTo(portHand ? Colour.GREEN : Colour.RED);
    } else {
      boolean bandsRepeat = row.cell("pattern_or_symbol").startsWith("bands; 2 black spheres");
      assertThat(bandsRepeat ? look.stream().distinct().toList() : look)
          .isEqualTo(
              Arrays.stream(row.cell("colours_top_to_bottom").split(";"))
                  .map(each -> Term.parse(Colour.class, each))
                  .toList());
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  @Covers({
    MarkRule.LATERAL_LIGHT_REGULAR,
    MarkRule.SAFE_WATER_LIGHT_MORSE_ONLY,
    MarkRule.SAFE_WATER_LIGHT_CANADA
  })
  void showsTheLightsListed(Row row) {
    List<String> lights = lights(row.cell("light"));
    assertThat(lights.isEmpty()).isEqualTo(row.practice() == Practice.USA);
    for (String light : lights) {
      assertThat(MarkingRules.allows(row.practice(), row.kind(), LightCharacter.parse(light)))
          .as(light)
          .isTrue();
    }
  }

  /** Also "Fl(2+1)G 6s or 10s" is two. */
  private static List<String> lights(String cell) {
    Matcher matcher =
        LIGHT.matcher(cell.replaceAll("(\\S+ ?[WRGY]) ([0-9.]+s) or ([0-9.]+s)", "$1 $2 or $1 $3"));
    return matcher
        .results()
        .map(each -> each.group(1) + " " + each.group(2) + " " + each.group(3) + "s")
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "port-hand, Fl G 4s, true",
    "port-hand, Fl G 2.5s, true",
    "port-hand, Oc G 4s, true",
    "port-hand, Iso G 6s, true",
    "starboard-hand, Q R, true",
    "starboard-hand, Fl(2) R 6s, false",
    "starboard-hand, Fl(2+1) R 6s, false",
    "preferred-channel-to-port, Fl(2+1) R 6s, true",
    "preferred-channel-to-port, Fl(2+1) G 6s, false",
    "safe-water, Mo(A) W 8s, true",
    "safe-water, LFl W 10s, false",
    "safe-water, Iso W 4s, false",
    "isolated-danger, Fl(2) W 5s, true",
    "special, Fl Y 4s, true",
    "special, Fl W 4s, false",
    "north-cardinal, Q W, false"
  })
  @Covers({MarkRule.LATERAL_LIGHT_REGULAR, MarkRule.SAFE_WATER_LIGHT_MORSE_ONLY})
  void showsRegularLateralLightsAndMorseAloneInTheUsa(String kind, String light, boolean allowed) {
    assertThat(MarkingRules.allows(Practice.USA, new MarkKind(kind), LightCharacter.parse(light)))
        .isEqualTo(allowed);
  }

  @ParameterizedTest
  @MethodSource("rows")
  @Covers(MarkRule.TOPMARKS_IN_USA)
  void carriesTopmarksAsItsCountryDoes(Row row) {
    boolean fitted = MarkingRules.look(row.practice(), row.kind()).topmark() != null;
    boolean toldByTopmark =
        row.practice() == Practice.CANADA
            || (row.cell("colours_top_to_bottom") + row.cell("pattern_or_symbol"))
                .matches(".*(2 black spheres|red sphere topmark).*");
    assertThat(fitted).isEqualTo(toldByTopmark);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void isNumberedAsItsCountryDoes(Row row) {
    boolean even = row.cell("numbers_letters").matches(".*\\beven\\b.*");
    boolean odd = row.cell("numbers_letters").matches(".*\\bodd\\b.*");
    assertThat(NumberRules.parity(row.practice().region(), row.kind()))
        .isEqualTo(
            even ? Optional.of(Parity.EVEN) : odd ? Optional.of(Parity.ODD) : Optional.empty());
  }

  @ParameterizedTest
  @MethodSource("rows")
  @Covers({MarkRule.SAFE_WATER_KEPT_TO_PORT, MarkRule.SPECIAL_NO_SIDE})
  void isLeftOnTheSideThatItsCountrySays(Row row) {
    String rule = row.cell("meaning_and_passing_rule");
    Optional<Side> with =
        SideRules.side(row.practice(), row.kind(), Travel.WITH, ChannelIntent.PREFERRED);
    Optional<Side> against =
        SideRules.side(row.practice(), row.kind(), Travel.AGAINST, ChannelIntent.PREFERRED);
    if (rule.contains("kept to PORT in both directions")) {
      assertThat(with).contains(Side.LEAVE_TO_PORT);
      assertThat(against).contains(Side.LEAVE_TO_PORT);
    } else if (rule.matches("(?i).*keep (it )?to (port|starboard).*")) {
      Side hand =
          rule.toLowerCase(Locale.ROOT).contains("to port")
              ? Side.LEAVE_TO_PORT
              : Side.LEAVE_TO_STARBOARD;
      if (rule.contains("preferred channel to ")) {
        hand = rule.contains("keep it to PORT") ? Side.LEAVE_TO_PORT : Side.LEAVE_TO_STARBOARD;
      }
      assertThat(with).contains(hand);
      assertThat(against).contains(hand.opposite());
    } else if (rule.matches(".*(either side|navigable water all round).*")) {
      assertThat(with).contains(Side.EITHER_SIDE);
      assertThat(against).contains(Side.EITHER_SIDE);
    } else if (!row.kind().isPreferredChannel()) {
      assertThat(with).isEmpty();
    }
  }

  @Test
  void hasNoSparsInTheUsa() {
    for (MarkKind kind : List.of(MarkKind.PORT_HAND, MarkKind.SAFE_WATER)) {
      assertThat(MarkingRules.allows(Practice.USA, kind, BodyShape.SPAR)).isFalse();
      assertThat(MarkingRules.allows(Practice.CANADA, kind, BodyShape.SPAR)).isTrue();
    }
  }

  @Test
  void showsOnlyLightsThatItAllowsAndThatMeanOneKind() {
    for (Practice practice : Practice.values()) {
      for (MarkDescription mark : practice.marks()) {
        for (LightCharacter light : mark.look().lights()) {
          assertThat(mark.lightLimit().allows(light)).as("%s %s", mark.id(), light).isTrue();
          if (mark.isToldAtNight()) {
            assertThat(Recognition.byLight(practice, light)).containsExactly(mark.kind());
          }
        }
      }
    }
  }
}
