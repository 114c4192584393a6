package withy.standard.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import withy.core.Term;
import withy.core.item.Form;
import withy.core.item.Misconception;
import withy.core.mark.ChannelIntent;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.View;
import withy.fixture.Channels;
import withy.fixture.Leads;
import withy.fixture.Situations;

/** Every belief leads to the wrong answer that the table of misconceptions gives. */
class MisconceptionsTest {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get();

  @TestFactory
  Stream<DynamicTest> beliefLeadsToItsAnswer() {
    return rows().stream()
        .map(row -> DynamicTest.dynamicTest(name(row), () -> leadsToItsAnswer(row)));
  }

  private static String name(CSVRecord row) {
    return row.get("id") + " " + row.get("misconception") + " in " + row.get("form");
  }

  private static void leadsToItsAnswer(CSVRecord row) {
    Misconception belief = Term.parse(Misconception.class, row.get("misconception"));
    assertThat(belief.answer(Term.parse(Form.class, row.get("form")), scenario(row)))
        .contains(row.get("answer"));
    assertThat(row.get("answer")).isNotEqualTo(row.get("key"));
  }

  private static Scenario scenario(CSVRecord row) {
    Practice practice = Practice.parse(row.get("practice"));
    Travel travel = Term.parse(Travel.class, row.get("travel"));
    if (row.get("form").equals("number")) {
      return Channels.of(practice, travel, row.get("kind"));
    }
    if (row.get("form").equals("leading")) {
      return leads(practice, row.get("kind"));
    }
    double heading = Double.parseDouble(row.get("heading"));
    if (row.get("kind").isEmpty()) {
      return Situations.river(practice, travel, heading);
    }
    Situations situation =
        Situations.of(practice)
            .seeing(row.get("kind"))
            .from(Term.parse(View.class, row.get("view")))
            .travelling(travel, heading);
    if (!row.get("intent").isEmpty()) {
      situation.wanting(Term.parse(ChannelIntent.class, row.get("intent")));
    }
    return row.get("light").isEmpty()
        ? situation.scenario()
        : situation.showing(row.get("light")).scenario();
  }

  /** "ahead 2 -2": the front marks so many degrees right of the rear ones. */
  private static Scenario leads(Practice practice, String sight) {
    String[] words = sight.split(" ");
    double[] openings = new double[words.length - 1];
    for (int i = 1; i < words.length; i++) {
      openings[i - 1] = Double.parseDouble(words[i]);
    }
    return words[0].equals("astern")
        ? Leads.astern(practice, openings[0])
        : Leads.ahead(practice, openings);
  }

  @Test
  void everyBeliefStandsInTheTable() {
    Set<Misconception> missing = EnumSet.allOf(Misconception.class);
    rows()
        .forEach(row -> missing.remove(Term.parse(Misconception.class, row.get("misconception"))));
    missing.removeAll(LookoutMisconceptionsTest.beliefs());
    missing.removeAll(ClearanceMisconceptionsTest.beliefs());
    assertThat(missing).containsExactly(Misconception.UNEXPLAINED);
  }

  /** M03: swapped regions and a forgotten direction together give the right side. */
  @Test
  void twoErrorsThatCancelAreTheTruth() {
    Scenario inOtherRegion =
        Situations.of(Practice.IALA_A)
            .seeing(MarkKind.STARBOARD_HAND)
            .travelling(Travel.WITH, 40)
            .scenario();
    assertThat(Misconception.DIRECTION_IGNORED.answer(Form.SIDE, inOtherRegion))
        .contains("leave-to-starboard");
  }

  private static List<CSVRecord> rows() {
    try (Reader reader =
        new InputStreamReader(
            Objects.requireNonNull(
                MisconceptionsTest.class.getResourceAsStream("misconceptions.csv")),
            StandardCharsets.UTF_8)) {
      return FORMAT.parse(reader).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
