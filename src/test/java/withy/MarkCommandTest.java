package withy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

class MarkCommandTest {
  private final StringWriter printed = new StringWriter();
  private final StringWriter complaints = new StringWriter();

  @Test
  void writesOneStandaloneSvg() {
    assertThat(run("north-cardinal", "--practice", "canada")).isZero();
    assertThat(printed.toString())
        .startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\"")
        .endsWith("</svg>" + System.lineSeparator());
    assertThat(complaints.toString()).isEmpty();
  }

  @Test
  void writesTheSameForTheSameSeed() {
    assertThat(run("special", "--practice", "iala-a", "--seed", "5")).isZero();
    String first = printed.toString();
    printed.getBuffer().setLength(0);
    assertThat(run("special", "--practice", "iala-a", "--seed", "5")).isZero();
    assertThat(printed.toString()).isEqualTo(first);
  }

  @Test
  void drawsAnotherLookForAnotherSeed() {
    for (int seed = 0; seed < 20; seed++) {
      assertThat(run("port-hand", "--practice", "usa", "--seed", String.valueOf(seed))).isZero();
    }
    assertThat(printed.toString().lines().distinct().count()).isGreaterThan(5);
  }

  @Test
  void showsTheLightAtNight() {
    assertThat(run("west-cardinal", "--practice", "iala-b", "--night")).isZero();
    assertThat(printed.toString()).contains("animate");
  }

  @ParameterizedTest
  @CsvSource({
    "lighthouse, iala-a, lighthouse: no kind of mark",
    "port-hand, iala-c, --practice iala-c: no such practice",
    "north-cardinal, usa, north-cardinal: there is no such mark under usa"
  })
  void refusesInOneLineWhatThereIsNot(String kind, String practice, String complaint) {
    assertThat(run(kind, "--practice", practice)).isEqualTo(2);
    assertThat(complaints.toString()).startsWith(complaint);
    assertThat(complaints.toString().lines()).hasSize(1);
    assertThat(printed.toString()).isEmpty();
  }

  private int run(String... arguments) {
    return new CommandLine(new MarkCommand())
        .setOut(new PrintWriter(printed, true))
        .setErr(new PrintWriter(complaints, true))
        .execute(arguments);
  }
}
