package withy.standard.marks;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import withy.core.Term;
import withy.core.mark.Colour;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.mark.Region;

/** A row of the table of marks, with the practice that it is held against. */
record MarkRow(CSVRecord cells, MarkKind kind, Practice practice) {
  private static final Map<String, MarkKind> KINDS =
      Map.ofEntries(
          Map.entry("LAT-PORT", MarkKind.PORT_HAND),
          Map.entry("LAT-STBD", MarkKind.STARBOARD_HAND),
          Map.entry("PREF-STBD", MarkKind.PREFERRED_CHANNEL_TO_STARBOARD),
          Map.entry("PREF-PORT", MarkKind.PREFERRED_CHANNEL_TO_PORT),
          Map.entry("CARD-N", MarkKind.NORTH_CARDINAL),
          Map.entry("CARD-E", MarkKind.EAST_CARDINAL),
          Map.entry("CARD-S", MarkKind.SOUTH_CARDINAL),
          Map.entry("CARD-W", MarkKind.WEST_CARDINAL),
          Map.entry("ISOD", MarkKind.ISOLATED_DANGER),
          Map.entry("SAFE", MarkKind.SAFE_WATER),
          Map.entry("SPEC", MarkKind.SPECIAL),
          Map.entry("EWMB", MarkKind.EMERGENCY_WRECK));

  /** Each row of the twelve kinds, once for every region that it speaks of. */
  static List<MarkRow> all() {
    return Tables.of("marks.csv").stream().flatMap(MarkRow::of).toList();
  }

  static boolean isOfTheTwelveKinds(CSVRecord cells) {
    return KINDS.containsKey(shortId(cells));
  }

  private static Stream<MarkRow> of(CSVRecord cells) {
    if (!isOfTheTwelveKinds(cells)) {
      return Stream.empty();
    }
    MarkKind kind = KINDS.get(shortId(cells));
    return Stream.of(Practice.IALA_A, Practice.IALA_B)
        .filter(practice -> cells.get("region").contains(practice.region().name()))
        .map(practice -> new MarkRow(cells, kind, practice));
  }

  private static String shortId(CSVRecord cells) {
    return cells.get("mark_id").replaceFirst("^[AB]-", "");
  }

  String cell(String column) {
    return cells.get(column);
  }

  List<String> parts(String column) {
    return List.of(cell(column).split(";"));
  }

  List<Colour> colours(String column) {
    return parts(column).stream().map(each -> Term.parse(Colour.class, each)).toList();
  }

  MarkLook look() {
    return MarkingRules.look(practice, kind);
  }

  Region region() {
    return practice.region();
  }

  @Override
  public String toString() {
    return cell("mark_id") + " in " + practice.id();
  }
}
