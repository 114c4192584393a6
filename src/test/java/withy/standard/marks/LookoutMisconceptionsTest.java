package withy.standard.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import withy.core.Term;
import withy.core.geometry.Bearing;
import withy.core.item.Form;
import withy.core.item.Misconception;
import withy.core.light.Elevation;
import withy.core.light.LightCharacter;
import withy.core.light.LightColour;
import withy.core.light.LightSector;
import withy.core.light.SectoredLight;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.scenario.Lookout;
import withy.core.scenario.RangeLookout;
import withy.core.scenario.Scenario;
import withy.core.scenario.SectorLookout;
import withy.core.scenario.SectorQuestion;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;

/** Every belief about a light ashore leads to the wrong answer that the table gives. */
class LookoutMisconceptionsTest {
  @TestFactory
  Stream<DynamicTest> beliefLeadsToItsAnswer() {
    return Tables.of("lookouts.csv").stream()
        .map(
            row ->
                DynamicTest.dynamicTest(
                    row.get("misconception") + " of " + row.get("character"),
                    () -> leadsToItsAnswer(row)));
  }

  /** The beliefs that the table holds. */
  static Set<Misconception> beliefs() {
    Set<Misconception> beliefs = EnumSet.noneOf(Misconception.class);
    Tables.of("lookouts.csv")
        .forEach(row -> beliefs.add(Term.parse(Misconception.class, row.get("misconception"))));
    return beliefs;
  }

  private static void leadsToItsAnswer(CSVRecord row) {
    Lookout lookout = lookout(row);
    Misconception belief = Term.parse(Misconception.class, row.get("misconception"));
    assertThat(belief.answer(Form.LIGHT, scenario(row, lookout))).contains(row.get("answer"));
    assertThat(truth(lookout)).isEqualTo(row.get("key"));
    assertThat(row.get("answer")).isNotEqualTo(row.get("key"));
  }

  private static String truth(Lookout lookout) {
    if (lookout instanceof SectorLookout sectors) {
      return sectors.question() == SectorQuestion.LIMIT
          ? String.format(Locale.ROOT, "%.0f", sectors.bearing().degrees())
          : sectors.seen().map(LightColour::id).orElse("obscured");
    }
    RangeLookout range = (RangeLookout) lookout;
    double miles = range.visibility() == null ? range.geographicRange() : range.seenFrom();
    return String.format(Locale.ROOT, "%.1f", miles);
  }

  private static Scenario scenario(CSVRecord row, Lookout lookout) {
    Practice practice = null;
    for (Practice each : Practice.values()) {
      practice = each.id().equals(row.get("practice")) ? each : practice;
    }
    Bearing heading = Bearing.of(Double.parseDouble(row.get("heading")));
    Situation situation =
        new Situation(heading, Travel.NONE, null, TimeOfDay.NIGHT, View.LIGHT, null, null, null);
    return new Scenario(practice, situation, List.of(), lookout);
  }

  private static Lookout lookout(CSVRecord row) {
    LightCharacter light = LightCharacter.parse(row.get("character"));
    if (row.get("question").isEmpty()) {
      String visibility = row.get("visibility");
      return new RangeLookout(
          light, height(row.get("eye")), visibility.isEmpty() ? null : Double.valueOf(visibility));
    }
    return new SectorLookout(
        light,
        sectors(row.get("sectors")),
        Bearing.of(Double.parseDouble(row.get("bearing"))),
        Term.parse(SectorQuestion.class, row.get("question")));
  }

  private static Elevation height(String text) {
    boolean feet = text.endsWith("ft");
    return new Elevation(new BigDecimal(text.replaceAll("[a-z]", "")), feet);
  }

  private static SectoredLight sectors(String text) {
    List<LightSector> sectors = new ArrayList<>();
    String[] words = text.split("[ -]", 0);
    for (int i = 0; i < words.length; i += 3) {
      sectors.add(
          LightSector.of(
              Double.parseDouble(words[i]),
              Double.parseDouble(words[i + 1]),
              LightColour.valueOf(words[i + 2].toUpperCase(Locale.ROOT))));
    }
    return new SectoredLight(sectors);
  }
}
