package withy.standard.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.mark.Board;
import withy.core.mark.BoardShape;
import withy.core.mark.Colour;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkGroup;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkRule;
import withy.core.mark.Passing;
import withy.core.mark.Practice;
import withy.standard.Covers;

/**
 * Dayboards as NOAA's electronic navigational charts code them (DAYMAR objects of eight cells, 2019
 * to 2024: TOPSHP, COLOUR), and leading marks (R1001, other marks; Bowditch chapter 5).
 */
class FixedMarksTest {
  @ParameterizedTest
  @CsvSource({
    "dayboard-sg, SQUARE, 4, 4",
    "dayboard-tr, TRIANGLE, 3, 3",
    "dayboard-ny, DIAMOND, 6, 6",
    "dayboard-nw, DIAMOND, 11, 1",
    "dayboard-nr, DIAMOND, 1, 1 3",
    "leading-front, RECTANGLE, 3, 3 1 3"
  })
  @Covers(MarkRule.DAYBOARDS)
  void haveTheShapeTheBorderAndTheColoursCharted(
      String id, BoardShape shape, String border, String ground) {
    MarkDescription mark = Practice.USA.mark(id).orElseThrow();
    Colour edge = Codes.colours(border).get(0);
    assertThat(mark.look().board()).isEqualTo(Board.of(shape, edge));
    assertThat(mark.look().colours()).isEqualTo(Codes.colours(ground.replace(' ', ',')));
  }

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  @Covers(MarkRule.LEADING_LINE)
  void leadsAlongTheLineOfTwoMarks(Practice practice) {
    CSVRecord row =
        Tables.of("marks.csv").stream()
            .filter(each -> each.get("mark_id").equals("LEAD"))
            .findFirst()
            .orElseThrow();
    assertThat(row.get("safe_water_rule")).startsWith("keep the two marks in line");
    for (MarkKind kind : List.of(MarkKind.LEADING_FRONT, MarkKind.LEADING_REAR)) {
      assertThat(practice.mark(kind).orElseThrow().passing()).isEqualTo(Passing.IN_LINE);
    }
  }

  @Test
  @Covers(MarkRule.BEACON_MEANS_WHAT_ITS_BUOY_MEANS)
  void meanWhatTheBuoysOfTheirClassMean() {
    for (Practice practice : Practice.values()) {
      for (MarkDescription each : practice.marks()) {
        MarkDescription buoy = practice.mark(each.kind()).orElseThrow();
        if (each.group() == MarkGroup.FIXED) {
          assertThat(each.passing()).as(each.id()).isEqualTo(buoy.passing());
          assertThat(each.demand()).as(each.id()).isEqualTo(buoy.demand());
        }
      }
    }
  }
}
