package withy.standard.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.light.LightCharacter;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkRule;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.mark.Recognition;
import withy.standard.Covers;

/** The lights of the twelve kinds: every rhythm below in every colour against the table's cells. */
class LightTableTest {
  private static final List<String> RHYTHMS =
      List.of(
          "F",
          "Fl 4s",
          "Fl(2) 5s",
          "Fl(2) 10s",
          "Fl(3) 12s",
          "Fl(5) 20s",
          "Fl(2+1) 6s",
          "Fl(2+1) 10s",
          "Fl(3+1) 20s",
          "LFl 10s",
          "LFl 8s",
          "LFl(2) 15s",
          "Iso 4s",
          "Iso 10s",
          "Oc 6s",
          "Oc(2) 8s",
          "Oc(2+1) 12s",
          "Q",
          "VQ",
          "UQ",
          "IQ 10s",
          "IVQ 10s",
          "Q(3) 10s",
          "Q(3) 12s",
          "Q(5) 15s",
          "VQ(3) 5s",
          "VQ(3) 6s",
          "Q(6)+LFl 15s",
          "Q(6)+LFl 18s",
          "VQ(6)+LFl 10s",
          "VQ(6)+LFl 12s",
          "Q(9) 15s",
          "Q(9) 18s",
          "VQ(9) 10s",
          "VQ(9) 12s",
          "Mo(A) 8s",
          "Mo(A) 6s",
          "Mo(D) 10s",
          "Mo(U) 15s");

  private static final Map<String, String> COLOURS =
      Map.of("white", "W", "red", "R", "green", "G", "yellow", "Y", "blue", "Bu");

  private static final String WRECK = "Al.Oc BuY 3s";

  static List<MarkRow> rows() {
    return MarkRow.all();
  }

  @ParameterizedTest
  @MethodSource("rows")
  @Covers({
    MarkRule.LATERAL_LIGHT,
    MarkRule.PREFERRED_CHANNEL_LIGHT,
    MarkRule.CARDINAL_LIGHTS,
    MarkRule.ISOLATED_DANGER_LIGHT,
    MarkRule.SAFE_WATER_LIGHT,
    MarkRule.SPECIAL_LIGHT
  })
  void allowsItsRhythmsInItsColourAndNoOther(MarkRow row) {
    for (String rhythm : RHYTHMS) {
      for (Map.Entry<String, String> colour : COLOURS.entrySet()) {
        boolean allowed =
            colour.getKey().equals(row.cell("light_colour"))
                && allows(row.cell("rhythms_allowed"), rhythm);
        assertThat(allows(row, coloured(rhythm, colour.getValue())))
            .as("%s %s", colour.getKey(), rhythm)
            .isEqualTo(allowed);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  @Covers(MarkRule.WRECK_LIGHT)
  void showsBlueAndYellowByTurnsOnNewWrecksAlone(MarkRow row) {
    boolean wreck = row.cell("light_colour").equals("blue+yellow alternating");
    assertThat(row.cell("rhythms_allowed").startsWith("Al.Oc.BuY.3s")).isEqualTo(wreck);
    for (String same : List.of(WRECK, "Al.Oc.BuY.3s", "Al.Oc YBu 3s")) {
      assertThat(allows(row, same)).as(same).isEqualTo(wreck);
    }
    assertThat(allows(row, "Al.Oc BuY 6s")).isFalse();
    assertThat(allows(row, "Al.Oc BuW 3s")).isFalse();
    assertThat(allows(row, "Al BuY 3s")).isFalse();
  }

  @Test
  @Covers(MarkRule.WRECK_LIGHT)
  void lightsEachColourOfTheWreckLightForOneSecond() {
    LightCharacter light =
        MarkingRules.look(Practice.IALA_A, MarkKind.EMERGENCY_WRECK).lights().get(0);
    assertThat(light.timeline().phases().stream().map(phase -> phase.millis()))
        .containsExactly(1000, 500, 1000, 500);
  }

  @ParameterizedTest
  @MethodSource("rows")
  @Covers(MarkRule.LIGHT_RESERVATIONS)
  void keepsWhatTheTableReserves(MarkRow row) {
    List<String> reserved = new ArrayList<>();
    String cell = row.cell("rhythms_reserved_or_barred");
    if (row.kind().isLateral()) {
      assertThat(cell).isEqualTo("Fl(2+1) barred");
      assertThat(allows(row, coloured("Fl(2+1) 6s", COLOURS.get(row.cell("light_colour")))))
          .isFalse();
    } else if (row.kind().isPreferredChannel()) {
      assertThat(cell).startsWith("Fl(2+1) is reserved to this family");
      reserved.add(coloured("Fl(2+1) 6s", COLOURS.get(row.cell("light_colour"))));
    } else if (row.kind().isCardinal()) {
      assertThat(cell).startsWith("white Q/VQ groups 3, 6+LFl, 9 are reserved to cardinals");
      RHYTHMS.stream()
          .filter(each -> allows(row.cell("rhythms_allowed"), each))
          .forEach(each -> reserved.add(coloured(each, "W")));
    } else {
      reserved.add(
          switch (row.kind().id()) {
            case "isolated-danger" -> reservedBy(cell, "white group of two", "Fl(2) W 5s");
            case "safe-water" -> reservedBy(cell, "white Mo(A) reserved", "Mo(A) W 8s");
            case "special" -> reservedBy(cell, "yellow is reserved to special marks", "Fl Y 4s");
            default -> reservedBy(cell, "blue light/paint occurs on no other IALA mark", WRECK);
          });
    }
    for (String light : reserved) {
      assertThat(Recognition.byLight(row.practice(), LightCharacter.parse(light)))
          .as(light)
          .containsExactly(row.kind());
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  @Covers(MarkRule.LIGHT_RESERVATIONS)
  void meansOneKindAtMostByEachLight(MarkRow row) {
    for (String rhythm : RHYTHMS) {
      for (String colour : COLOURS.values()) {
        LightCharacter light = LightCharacter.parse(coloured(rhythm, colour));
        assertThat(Recognition.byLight(row.practice(), light)).as("%s", light).hasSizeLessThan(2);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void showsOnlyLightsThatItsRowAllows(MarkRow row) {
    assertThat(row.look().lights())
        .isNotEmpty()
        .allMatch(light -> MarkingRules.allows(row.practice(), row.kind(), light));
  }

  private static String reservedBy(String cell, String words, String light) {
    assertThat(cell).contains(words);
    return light;
  }

  private static boolean allows(MarkRow row, String notation) {
    return MarkingRules.allows(row.practice(), row.kind(), LightCharacter.parse(notation));
  }

  /** What a cell of the table allows: a list, all but one, or what no white mark shows. */
  private static boolean allows(String cell, String rhythm) {
    if (cell.equals("any rhythm EXCEPT composite group Fl(2+1)")) {
      return !listed("Fl(2+1)", rhythm);
    }
    if (cell.startsWith("any rhythm not used by white lights of cardinal, isolated danger, safe")) {
      return MarkRow.all().stream()
          .filter(row -> row.cell("light_colour").equals("white"))
          .noneMatch(row -> listed(row.cell("rhythms_allowed"), rhythm));
    }
    return listed(cell, rhythm);
  }

  /** A listed rhythm without a period allows any. */
  private static boolean listed(String cell, String rhythm) {
    String whole = rhythm.replace(" ", "");
    String alone = rhythm.split(" ")[0];
    return List.of(cell.replace(" (continuous)", "").split(" \\| ")).stream()
        .anyMatch(each -> each.equals(whole) || each.equals(alone));
  }

  private static String coloured(String rhythm, String colour) {
    String[] parts = rhythm.split(" ");
    return parts[0] + " " + colour + (parts.length > 1 ? " " + parts[1] : "");
  }
}
