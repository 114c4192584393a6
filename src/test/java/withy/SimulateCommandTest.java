package withy;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

class SimulateCommandTest {
  private static final String[] SMALL = {
    "simulate",
    "--learners",
    "24",
    "--items",
    "9",
    "--seed",
    "4",
    "--concept",
    "cardinal-identity",
    "--concept",
    "safe-water",
    "--concept",
    "special-mark"
  };

  @Test
  void printsEveryFigureBesideItsTarget() throws IOException {
    CommandLineRun run = CommandLineRun.of(SMALL);
    assertThat(run.status()).isZero();
    JsonNode printed = new ObjectMapper().readTree(run.printed());
    assertThat(printed.get("policies")).hasSize(4);
    assertThat(printed.get("targets"))
        .hasSize(12)
        .allSatisfy(target -> assertThat(target.get("met").isBoolean()).isTrue());
  }

  @Test
  void printsTheSameBytesForTheSameArguments() {
    assertThat(CommandLineRun.of(SMALL).printed()).isEqualTo(CommandLineRun.of(SMALL).printed());
  }

  @ParameterizedTest
  @CsvSource({
    "--learners, 0",
    "--items, 2",
    "--learning, 1.5",
    "--policy, guesswork",
    "--practice, iala-c",
    "--concept, knots"
  })
  void refusesInOneLineWhatCannotBeSimulated(String option, String value) {
    StringWriter complaints = new StringWriter();
    int status =
        new CommandLine(new SimulateCommand())
            .setErr(new PrintWriter(complaints, true))
            .execute(option, value);
    assertThat(status).isEqualTo(2);
    assertThat(complaints.toString()).contains(option).contains(value);
  }
}
