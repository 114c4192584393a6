package withy.standard.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.Term;
import withy.core.light.LightCharacter;
import withy.core.light.LightColour;
import withy.core.mark.BoardShape;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkGroup;
import withy.core.mark.Numbering;
import withy.core.mark.Practice;
import withy.core.mark.PracticeNote;
import withy.core.mark.Symbol;
import withy.core.mark.Taper;
import withy.core.mark.Waters;

/**
 * Each row of the table of national marks has its marks, and each national mark its row (TP 968,
 * SOR/99-335, 33 CFR 62, key of dayboard letters).
 */
class EveryNationalMarkTest {
  /** Country and row, with the ids of the marks that the row describes. */
  private static final String[][] MARKS = {
    {"canada", "port hand buoy", "port-hand"},
    {"canada", "starboard hand buoy", "starboard-hand"},
    {"canada", "port bifurcation buoy", "preferred-channel-to-starboard"},
    {"canada", "starboard bifurcation buoy", "preferred-channel-to-port"},
    {"canada", "fairway buoy", "safe-water"},
    {"canada", "isolated danger buoy", "isolated-danger"},
    {"canada", "north cardinal buoy", "north-cardinal"},
    {"canada", "east cardinal buoy", "east-cardinal"},
    {"canada", "south cardinal buoy", "south-cardinal"},
    {"canada", "west cardinal buoy", "west-cardinal"},
    {"canada", "cautionary buoy", "cautionary", "special"},
    {"canada", "anchorage buoy", "anchorage"},
    {"canada", "mooring buoy", "mooring"},
    {"canada", "information buoy", "information"},
    {"canada", "hazard buoy", "hazard"},
    {"canada", "control buoy", "control"},
    {"canada", "keep-out buoy", "keep-out"},
    {"canada", "swimming buoy", "swimming"},
    {"canada", "diving buoy", "diving"},
    {"canada", "scientific (ODAS) buoy", "scientific"},
    {"canada", "private buoy (any class)", "private-buoy"},
    {"canada", "port hand daybeacon", "port-hand-daybeacon"},
    {"canada", "starboard hand daybeacon", "starboard-hand-daybeacon"},
    {"canada", "range (leading marks)", "leading-front", "leading-rear"},
    {"usa", "port side mark", "port-hand"},
    {"usa", "starboard side mark", "starboard-hand"},
    {
      "usa", "preferred channel mark", "preferred-channel-to-starboard", "preferred-channel-to-port"
    },
    {"usa", "safe water mark", "safe-water"},
    {"usa", "isolated danger mark", "isolated-danger"},
    {"usa", "special mark", "special"},
    {"usa", "information/regulatory: danger", "hazard"},
    {"usa", "information/regulatory: exclusion", "keep-out"},
    {"usa", "information/regulatory: control", "control"},
    {"usa", "information/regulatory: information", "information"},
    {"usa", "inland waters obstruction mark", "inland-obstruction"},
    {"usa", "mooring buoy", "mooring"},
    {"usa", "ICW yellow triangle", "intracoastal-triangle"},
    {"usa", "ICW yellow square", "intracoastal-square"},
    {"usa", "ICW yellow horizontal band", "intracoastal-band"},
    {"usa", "Western Rivers: buoys", "western-rivers-port-hand", "western-rivers-starboard-hand"},
    {"usa", "dayboard SG", "dayboard-sg"},
    {"usa", "dayboard TR", "dayboard-tr"},
    {"usa", "dayboard JG", "dayboard-jg"},
    {"usa", "dayboard JR", "dayboard-jr"},
    {"usa", "dayboard MR", "dayboard-mr"},
    {"usa", "dayboard CG / CR", "crossing-board-green", "crossing-board-red"},
    {"usa", "dayboard NB", "dayboard-nb"},
    {"usa", "dayboard NG", "dayboard-ng"},
    {"usa", "dayboard NR", "dayboard-nr"},
    {"usa", "dayboard NW", "dayboard-nw"},
    {"usa", "dayboard NY", "dayboard-ny"},
    {"usa", "dayboard NL", "dayboard-nl"},
    {"usa", "dayboard -I suffix", "intracoastal-band"},
    {"usa", "dayboard -SY / -TY suffix", "intracoastal-square", "intracoastal-triangle"}
  };

  /** The board code of leading marks: letters of ground and stripe in every pair. */
  private static final String RANGE_BOARDS = "dayboard KRW (K + ground + stripe:";

  /** Facts of which there is no picture, and the note that states each. */
  private static final Map<String, String> NOTES =
      Map.of(
          "emergency light of a major light", "emergency-light",
          "unspecified light colour", "light-colour-unstated",
          "racon", "racon");

  /** Ended on 31 December 2003 (33 CFR 62.1(b)(2)). */
  private static final String EXPIRED = "USWMS (expired 31 Dec 2003)";

  static List<NationalRow> rows() {
    List<NationalRow> rows = new ArrayList<>();
    for (CSVRecord cells : Tables.of("national_marks.csv")) {
      Practice practice = practice(cells);
      for (String id : ids(cells)) {
        rows.add(new NationalRow(practice, practice.mark(id).orElseThrow(), cells));
      }
    }
    return rows;
  }

  private static Practice practice(CSVRecord cells) {
    return cells.get("country").equals("Canada") ? Practice.CANADA : Practice.USA;
  }

  private static List<String> ids(CSVRecord cells) {
    if (cells.get("item").startsWith(RANGE_BOARDS)) {
      return List.of("leading-front", "leading-rear");
    }
    for (String[] each : MARKS) {
      if (each[0].equals(practice(cells).id()) && each[1].equals(cells.get("item"))) {
        return List.of(each).subList(2, each.length);
      }
    }
    return List.of();
  }

  @Test
  void leavesNoRowWithoutAMarkOrANote() {
    for (CSVRecord cells : Tables.of("national_marks.csv")) {
      String item = cells.get("item");
      if (NOTES.containsKey(item)) {
        assertThat(practice(cells).notes()).extracting(PracticeNote::id).contains(NOTES.get(item));
      } else if (!item.equals(EXPIRED)) {
        assertThat(ids(cells)).as(item).isNotEmpty();
      }
    }
  }

  /** Beacons of the system's classes and the wreck mark of the IMO are no country's own. */
  @Test
  void leavesNoNationalMarkWithoutARow() {
    Map<Practice, Set<String>> listed = new LinkedHashMap<>();
    for (NationalRow each : rows()) {
      listed.computeIfAbsent(each.practice(), none -> new LinkedHashSet<>()).add(each.mark().id());
    }
    listed.forEach(
        (practice, ids) ->
            assertThat(practice.marks())
                .extracting(MarkDescription::id)
                .filteredOn(id -> !id.endsWith("-beacon") && !id.equals("emergency-wreck"))
                .containsExactlyInAnyOrderElementsOf(ids));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void showsTheColoursNamed(NationalRow row) {
    String cell = row.cell("colours_top_to_bottom");
    if (cell.startsWith("yellow ") && row.mark().waters() == Waters.INTRACOASTAL) {
      assertThat(row.coloursShown()).as("any mark, with the symbol").contains("yellow");
    } else if (cell.equals("as class")) {
      assertThat(row.coloursShown()).hasSize(1);
    } else if (row.mark().group() == MarkGroup.LEADING) {
      leadsByAStripe(row);
    } else if (row.mark().waters() == Waters.WESTERN_RIVERS
        || row.cell("item").startsWith("preferred")) {
      assertThat(row.coloursNamed())
          .containsExactlyInAnyOrder("red", "green")
          .contains(row.look().colours().get(0).id());
    } else {
      assertThat(row.coloursShown()).isEqualTo(row.coloursNamed());
    }
    if (cell.matches("\\w+(;\\w+)+|top half .*")
        && !row.cell("pattern_or_symbol").startsWith("bands; 2 black")) {
      String bands = cell.replaceFirst("top half (\\w+), lower half (\\w+); .*", "$1;$2");
      assertThat(row.look().colours())
          .isEqualTo(
              Stream.of(bands.split(";")).map(each -> Term.parse(Colour.class, each)).toList());
    }
  }

  private static void leadsByAStripe(NationalRow row) {
    List<Colour> stripes = row.look().colours();
    assertThat(row.look().pattern()).isEqualTo(ColourPattern.VERTICAL);
    assertThat(stripes).hasSize(3);
    assertThat(stripes.get(0)).isEqualTo(stripes.get(2)).isNotEqualTo(stripes.get(1));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void bearsTheSymbolNamed(NationalRow row) {
    boolean waterway = row.mark().waters() == Waters.INTRACOASTAL;
    boolean board = row.look().board() != null;
    Symbol symbol = row.look().symbol();
    if (waterway) {
      String cells = row.cell("item") + row.cell("colours_top_to_bottom");
      String last = symbol.id().substring("yellow-".length());
      assertThat(cells).containsAnyOf(last, symbol == Symbol.YELLOW_BAND ? "strip" : last);
    } else {
      assertThat(symbol).isEqualTo(board ? null : row.symbolNamed());
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void hasTheShapeNamed(NationalRow row) {
    String shape = row.cell("pattern_or_symbol") + " " + row.cell("shape");
    if (row.look().board() != null && row.mark().group() != MarkGroup.LEADING) {
      BoardShape board = row.look().board().shape();
      assertThat(shape).contains(board.id());
      if (row.cell("colours_top_to_bottom").contains(" border")) {
        assertThat(row.cell("colours_top_to_bottom"))
            .contains(row.look().board().border().id() + " border");
      }
    }
    if (shape.contains("hourglass")) {
      boolean front = row.mark().id().equals("leading-front");
      assertThat(row.look().board().taper()).isEqualTo(front ? Taper.UP : Taper.DOWN);
    }
    Map<String, BodyShape> bodies =
        Map.of(
            "can", BodyShape.CAN,
            "conical", BodyShape.CONICAL,
            "nun", BodyShape.CONICAL,
            "pillar", BodyShape.PILLAR,
            "spar", BodyShape.SPAR,
            "spherical", BodyShape.SPHERICAL);
    if (!row.mark().kind().isPreferredChannel() && !row.look().isFixed()) {
      bodies.forEach(
          (word, body) -> {
            if (row.cell("shape").matches("(^|.*[ /])" + word + "\\b.*")) {
              assertThat(row.look().bodies()).as(word).contains(body);
            }
          });
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void showsTheLightNamed(NationalRow row) {
    String cell = row.cell("light");
    List<LightCharacter> lights = row.look().lights();
    if (cell.matches("Fl(\\(5\\))? ?Y \\d+s")) {
      assertThat(lights).contains(LightCharacter.parse(cell));
    } else if (cell.equals("white")) {
      assertThat(lights)
          .isNotEmpty()
          .allMatch(each -> each.colours().equals(List.of(LightColour.WHITE)));
    } else if (cell.startsWith("green: single flash")) {
      boolean green = row.mark().id().equals("western-rivers-port-hand");
      assertThat(lights)
          .extracting(LightCharacter::notation)
          .allMatch(each -> each.startsWith(green ? "Fl " : "Fl(2) "))
          .anyMatch(each -> each.contains(green ? " G" : " R"))
          .anyMatch(each -> each.contains(" W"));
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void isNumberedAsNamed(NationalRow row) {
    String cell = row.cell("numbers_letters");
    Optional<Numbering> expected =
        cell.startsWith("owner")
            ? Optional.of(Numbering.PRIV)
            : cell.startsWith("buoys unnumbered")
                ? Optional.of(Numbering.BARE)
                : cell.matches(".*\\b(odd|even)\\b.*")
                    ? Optional.of(Numbering.NUMBERED)
                    : cell.startsWith("letter") || cell.startsWith("may be lettered")
                        ? Optional.of(Numbering.LETTERED)
                        : Optional.empty();
    expected.ifPresent(each -> assertThat(row.mark().numbering()).isEqualTo(each));
    if (expected.isEmpty() && !row.look().isFixed() && row.mark().waters() == null) {
      assertThat(row.mark().numbering()).isIn(Numbering.WORDED, Numbering.BARE);
    }
  }

  @Test
  void writesTheMilesOnTheBeaconsOfRivers() {
    assertThat(Practice.USA.mark("crossing-board-red").orElseThrow().numbering())
        .isEqualTo(Numbering.RIVER_MILES);
  }

  /** The words of a row, and what by them the mark asks. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "canada | cautionary            | firing ranges            | take-care",
        "canada | anchorage             | limits of anchorage area | anchor-within",
        "canada | mooring               | vessels may lie to it    | may-moor",
        "canada | information           | locality, marina         | read-notice",
        "canada | hazard                | random hazards           | beware-of-danger",
        "canada | control               | speed limit              | obey-restriction",
        "canada | keep-out              | boats prohibited         | stay-out",
        "canada | swimming              | limit of swimming area   | leave-to-swimmers",
        "canada | diving                | diving in progress       | mind-divers",
        "canada | scientific            | data buoy                | leave-alone",
        "canada | port-hand-daybeacon   | keep to port             | keep-to-its-side",
        "canada | starboard-hand-daybeacon | keep to starboard     | keep-to-its-side",
        "canada | leading-front         | keep in line             | keep-in-line",
        "usa | special                  | areas and features       | read-chart",
        "usa | hazard                   | danger                   | beware-of-danger",
        "usa | keep-out                 | vessels excluded         | stay-out",
        "usa | control                  | operating restriction    | obey-restriction",
        "usa | information              | directions, instructions | read-notice",
        "usa | inland-obstruction       | nearest shore            | stay-offshore",
        "usa | mooring                  | mooring                  | may-moor",
        "usa | dayboard-sg              | port side dayboard       | keep-to-its-side",
        "usa | dayboard-tr              | starboard side dayboard  | keep-to-its-side",
        "usa | dayboard-jg              | preferred channel to starboard | choose-channel",
        "usa | dayboard-jr              | preferred channel to port | choose-channel",
        "usa | dayboard-mr              | safe water               | go-either-side",
        "usa | crossing-board-green     | crossing boards          | cross-over",
        "usa | crossing-board-red       | crossing boards          | cross-over",
        "usa | dayboard-nb              | no special meaning       | find-position",
        "usa | dayboard-ng              | non-lateral              | find-position",
        "usa | dayboard-nr              | non-lateral              | find-position",
        "usa | dayboard-nw              | danger/information       | beware-of-danger",
        "usa | dayboard-ny              | special (non-lateral)    | read-chart",
        "usa | dayboard-nl              | location/information     | read-notice"
      })
  void asksWhatItsRowSays(String practice, String id, String words, String demand) {
    NationalRow row =
        rows().stream()
            .filter(each -> each.practice().id().equals(practice) && each.mark().id().equals(id))
            .findFirst()
            .orElseThrow();
    assertThat(row.cell("meaning_and_passing_rule")).contains(words);
    assertThat(row.mark().demand().id()).isEqualTo(demand);
  }
}
