package withy.standard.marks;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.core.mark.BodyShape.CAN;
import static withy.core.mark.BodyShape.CONICAL;
import static withy.core.mark.BodyShape.PILLAR;
import static withy.core.mark.BodyShape.SPAR;
import static withy.core.mark.BodyShape.SPHERICAL;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.Term;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.ColourPattern;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.mark.MarkRule;
import withy.core.mark.MarkingRules;
import withy.core.mark.NumberRules;
import withy.core.mark.Practice;
import withy.core.mark.PracticeNames;
import withy.core.mark.Recognition;
import withy.core.mark.Topmark;
import withy.core.mark.TopmarkShape;
import withy.standard.Covers;

/** The looks of the twelve kinds, column by column, in both regions. */
class MarkTableTest {
  /** Rows of the table that are none of the twelve kinds, and why. */
  private static final Map<String, String> BEYOND_THE_KINDS =
      Map.of(
          "NEWD", "looks as the lateral, cardinal or isolated danger mark that is used",
          "LEAD", "leading marks are a line of two, with rules of their own",
          "SECT", "a light with sectors is no body that is left on a side",
          "LHSE", "a lighthouse may have any colour and any rhythm",
          "BEAC", "a beacon is the kind whose class it belongs to, with body beacon",
          "MFLT", "a light vessel looks as its authority decides",
          "AUX", "minor marks look as their authority decides",
          "AISV", "an electronic mark has no body",
          "MATON", "no look is laid down for mobile marks");

  /** Columns that nothing in the core is held against, and why. */
  private static final Map<String, String> NOT_MODELLED =
      Map.of(
          "retro_standard", "no reflector is drawn or asked about yet",
          "retro_comprehensive", "no reflector is drawn or asked about yet",
          "source", "names the documents",
          "from_memory_parts", "says which cells wait for a look into the document");

  private static final List<String> HELD =
      List.of(
          "mark_id",
          "region",
          "family",
          "name_iala",
          "name_ca",
          "colours_top_to_bottom",
          "pattern",
          "buoy_shapes",
          "topmark",
          "topmark_colour",
          "light_colour",
          "rhythms_allowed",
          "rhythms_reserved_or_barred",
          "number_rule",
          "leave_mark_when_heading_with_buoyage",
          "leave_mark_when_heading_against",
          "safe_water_rule",
          "s57_class",
          "s57_defining",
          "s57_COLOUR",
          "s57_COLPAT",
          "s57_TOPSHP");

  private static final Map<String, TopmarkShape> TOPMARKS =
      Map.ofEntries(
          Map.entry("single cylinder (can)", TopmarkShape.CAN),
          Map.entry("single cone, point up", TopmarkShape.CONE_UP),
          Map.entry("2 cones, points up", TopmarkShape.TWO_CONES_UP),
          Map.entry("2 cones, base to base", TopmarkShape.TWO_CONES_BASE_TO_BASE),
          Map.entry("2 cones, points down", TopmarkShape.TWO_CONES_DOWN),
          Map.entry("2 cones, point to point", TopmarkShape.TWO_CONES_POINT_TO_POINT),
          Map.entry("2 spheres, vertical", TopmarkShape.TWO_SPHERES),
          Map.entry("1 sphere (only if buoy is pillar/spar)", TopmarkShape.SPHERE),
          Map.entry("single X (St Andrew cross)", TopmarkShape.X),
          Map.entry("upright cross (St George)", TopmarkShape.UPRIGHT_CROSS));

  private static final ResourceBundle WORDS = ResourceBundle.getBundle("messages", Locale.ROOT);

  static List<MarkRow> rows() {
    return MarkRow.all();
  }

  @Test
  void holdsEachKindOfEachRegionAgainstOneRow() {
    assertThat(rows()).hasSize(24);
    assertThat(rows().stream().map(row -> row.practice() + " " + row.kind()))
        .doesNotHaveDuplicates();
  }

  @Test
  void namesEachRowBeyondTheTwelveKindsWithItsReason() {
    assertThat(
            Tables.of("marks.csv").stream()
                .filter(row -> !MarkRow.isOfTheTwelveKinds(row))
                .map(row -> row.get("mark_id")))
        .containsExactlyInAnyOrderElementsOf(BEYOND_THE_KINDS.keySet());
    assertThat(BEYOND_THE_KINDS.values()).noneMatch(String::isBlank);
  }

  @Test
  void holdsEachColumnOrSaysWhyNot() {
    CSVRecord row = Tables.of("marks.csv").get(0);
    List<String> known = new ArrayList<>(HELD);
    known.addAll(NOT_MODELLED.keySet());
    assertThat(known).containsExactlyInAnyOrderElementsOf(row.getParser().getHeaderNames());
    assertThat(NOT_MODELLED.values()).noneMatch(String::isBlank);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void belongsToItsFamily(MarkRow row) {
    assertThat(row.kind().isLateral()).isEqualTo(row.cell("family").equals("lateral"));
    assertThat(row.kind().isPreferredChannel())
        .isEqualTo(row.cell("family").equals("modified lateral"));
    assertThat(row.kind().isCardinal()).isEqualTo(row.cell("family").equals("cardinal"));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void bearsItsNameInTheSystem(MarkRow row) {
    assertThat(WORDS.getString(PracticeNames.key(row.practice(), row.kind())))
        .startsWithIgnoringCase(row.cell("name_iala"));
  }

  @ParameterizedTest
  @MethodSource("rows")
  @Covers(MarkRule.CANADIAN_NAMES)
  void bearsItsNameInCanada(MarkRow row) {
    String name = WORDS.getString(PracticeNames.key(Practice.CANADA, row.kind()));
    String published = row.cell("name_ca");
    if (published.equals("(not used in Canada)")) {
      assertThat(row.region()).isNotEqualTo(Practice.CANADA.region());
    } else if (row.kind() == MarkKind.SPECIAL) {
      assertThat(published).as("named by purpose").contains("cautionary", "anchorage", "ODAS");
      assertThat(name).isEqualTo("special buoy");
    } else {
      assertThat(name).startsWithIgnoringCase(published.replaceAll("[()]", ""));
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  @Covers({
    MarkRule.LATERAL_COLOUR_BY_REGION,
    MarkRule.PREFERRED_CHANNEL_ONE_BAND,
    MarkRule.CARDINAL_COLOURS,
    MarkRule.ISOLATED_DANGER_LOOK,
    MarkRule.SAFE_WATER_LOOK,
    MarkRule.SPECIAL_LOOK,
    MarkRule.WRECK_LOOK
  })
  void wearsItsColours(MarkRow row) {
    assertThat(row.look().colours()).isEqualTo(row.colours("colours_top_to_bottom"));
    String pattern = row.cell("pattern").split(" ")[0];
    assertThat(row.look().pattern().id()).isEqualTo(pattern.equals("solid") ? "plain" : pattern);
  }

  @ParameterizedTest
  @MethodSource("rows")
  @Covers({MarkRule.SHAPE_KEEPS_ITS_SIDE, MarkRule.SPECIAL_SHAPE_NOT_MISLEADING})
  void hasOneOfItsBodies(MarkRow row) {
    if (row.kind() == MarkKind.SPECIAL) {
      assertThat(row.cell("buoy_shapes")).startsWith("any shape that does not conflict");
      assertThat(row.look().bodies()).doesNotContain(CAN, CONICAL, SPHERICAL);
      assertThat(List.of(CAN, CONICAL, SPHERICAL, PILLAR, SPAR))
          .allMatch(body -> MarkingRules.allows(row.practice(), row.kind(), body));
    } else {
      List<BodyShape> published =
          row.parts("buoy_shapes").stream().map(each -> Term.parse(BodyShape.class, each)).toList();
      assertThat(row.look().bodies()).isEqualTo(published);
      for (BodyShape body : List.of(CAN, CONICAL, SPHERICAL, PILLAR, SPAR)) {
        assertThat(MarkingRules.allows(row.practice(), row.kind(), body))
            .isEqualTo(published.contains(body));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  @Covers({
    MarkRule.LATERAL_TOPMARK,
    MarkRule.PREFERRED_CHANNEL_TOPMARK,
    MarkRule.CARDINAL_TOPMARKS,
    MarkRule.ISOLATED_DANGER_LOOK,
    MarkRule.SPECIAL_LOOK,
    MarkRule.WRECK_LOOK
  })
  void carriesItsTopmark(MarkRow row) {
    assertThat(row.look().topmark())
        .isEqualTo(new Topmark(TOPMARKS.get(row.cell("topmark")), row.colours("topmark_colour")));
  }

  @ParameterizedTest
  @MethodSource("rows")
  @Covers(MarkRule.SAFE_WATER_LOOK)
  void carriesTheTopmarkWhereTheBodyDoesNotTell(MarkRow row) {
    boolean notOnSpheres = row.cell("topmark").contains("only if buoy is pillar/spar");
    for (BodyShape body : row.look().bodies()) {
      boolean sphere = body == SPHERICAL;
      assertThat(row.look().topmarkPossible(body)).isEqualTo(!(notOnSpheres && sphere));
      assertThat(row.look().topmarkRequired(body))
          .isEqualTo(row.kind() != MarkKind.SPECIAL && (body == PILLAR || body == SPAR));
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  @Covers({MarkRule.RED_EVEN_GREEN_ODD, MarkRule.ONLY_LATERAL_NUMBERED})
  void isNumberedByItsColourOrNotAtAll(MarkRow row) {
    boolean numbered = row.cell("number_rule").startsWith("red even / green odd");
    assertThat(NumberRules.isNumbered(row.kind())).isEqualTo(numbered);
    String expected =
        !numbered ? "none" : row.cell("colours_top_to_bottom").equals("red") ? "even" : "odd";
    assertThat(NumberRules.parity(row.region(), row.kind()).map(Term::id).orElse("none"))
        .isEqualTo(expected);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void isTheKindThatTheChartCodesSay(MarkRow row) {
    assertThat(Codes.kind(row.cell("s57_class"), row.cell("s57_defining"))).isEqualTo(row.kind());
    MarkLook look = row.look();
    assertThat(look.pattern()).isEqualTo(Codes.pattern(row.cell("s57_COLPAT")));
    assertThat(look.topmark()).isNotNull();
    assertThat(look.topmark().shape()).isEqualTo(Codes.topmark(row.cell("s57_TOPSHP")));
    List<String> orders = Arrays.asList(row.cell("s57_COLOUR").split(" or "));
    assertThat(look.colours()).isEqualTo(Codes.colours(orders.get(0)));
    for (String order : orders) {
      assertThat(seen(row, order)).containsExactly(row.kind());
    }
  }

  private static List<MarkKind> seen(MarkRow row, String colours) {
    ColourPattern pattern = Codes.pattern(row.cell("s57_COLPAT"));
    MarkLook look = row.look();
    return Recognition.byDay(
        row.practice(),
        new Appearance(PILLAR, pattern, Codes.colours(colours), look.topmark(), null));
  }

  @Test
  @Covers(MarkRule.LATERAL_COLOUR_BY_REGION)
  void differsBetweenRegionsOnlyInLateralAndPreferredChannelMarks() {
    Set<MarkKind> different = new LinkedHashSet<>();
    for (MarkKind kind : Practice.IALA_A.kinds()) {
      if (!MarkingRules.look(Practice.IALA_A, kind)
          .colours()
          .equals(MarkingRules.look(Practice.IALA_B, kind).colours())) {
        different.add(kind);
      }
    }
    assertThat(different)
        .containsExactly(
            MarkKind.PORT_HAND,
            MarkKind.STARBOARD_HAND,
            MarkKind.PREFERRED_CHANNEL_TO_STARBOARD,
            MarkKind.PREFERRED_CHANNEL_TO_PORT);
  }
}
