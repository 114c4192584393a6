package withy;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class ScenariosCommandTest {
  @TempDir private Path folder = Path.of("");

  private record Outcome(int status, String out, String err) {}

  @Test
  void writesAsManyLinesAsAsked() throws IOException {
    Outcome outcome = run("--practice", "iala-a", "--count", "25", "--seed", "3");
    assertThat(outcome.status()).isZero();
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.out().lines()).hasSize(25);
    assertThat(outcome.out()).endsWith("}\n").doesNotContain("\r");
    JsonNode last = new ObjectMapper().readTree(outcome.out().lines().toList().get(24));
    assertThat(last.path("seed").asInt()).isEqualTo(3);
    assertThat(last.path("index").asInt()).isEqualTo(24);
  }

  @Test
  void keepsToTheForms() throws IOException {
    Outcome outcome =
        run("--practice", "usa", "--form", "side", "--form", "light", "--count", "40");
    for (String line : outcome.out().lines().toList()) {
      assertThat(new ObjectMapper().readTree(line).path("form").asText()).isIn("side", "light");
    }
  }

  @Test
  void writesTheFieldsInTheirOrder() throws IOException {
    JsonNode item =
        new ObjectMapper()
            .readTree(run("--practice", "iala-b", "--form", "side", "--count", "1").out());
    assertThat(item.fieldNames())
        .toIterable()
        .containsExactly(
            "form",
            "seed",
            "index",
            "practice",
            "region",
            "concepts",
            "situation",
            "marks",
            "prompt",
            "options",
            "key",
            "explanation");
    assertThat(item.path("situation").fieldNames())
        .toIterable()
        .containsExactly("heading", "travel", "buoyageBearing", "time", "view", "intent");
    assertThat(item.path("marks").path(0).fieldNames())
        .toIterable()
        .containsExactly("kind", "bearing", "distance", "label", "appearance");
    assertThat(item.path("marks").path(0).path("appearance").fieldNames())
        .toIterable()
        .containsExactly("body", "pattern", "colours", "symbol", "board", "topmark", "light");
  }

  @Test
  void drawsFromADrillSet() throws IOException {
    Path set = folder.resolve("set.json");
    Files.writeString(set, "{\"title\":\"T\",\"concepts\":[\"safe-water\"],\"length\":7}");
    Outcome outcome = run("--practice", "canada", "--set", set.toString());
    assertThat(outcome.out().lines())
        .hasSize(7)
        .allMatch(each -> each.contains("\"concepts\":[\"safe-water\""));
  }

  @Test
  void saysInOneLineWhatCannotBeUsed() throws IOException {
    Path set = folder.resolve("set.json");
    Files.writeString(set, "{\"length\":0}");
    List<Outcome> refused =
        List.of(
            run("--practice", "mars"),
            run("--practice", "usa", "--form", "cardinal-pass"),
            run("--practice", "iala-a", "--form", "guess"),
            run("--practice", "iala-a", "--count", "-1"),
            run("--practice", "iala-a", "--set", folder.resolve("none").toString()),
            run("--practice", "iala-a", "--set", set.toString()));
    for (Outcome each : refused) {
      assertThat(each.status()).isEqualTo(2);
      assertThat(each.out()).isEmpty();
      assertThat(each.err().lines()).hasSize(1);
    }
    assertThat(refused.get(0).err()).contains("--practice 'mars' is none of iala-a, iala-b");
    assertThat(refused.get(1).err()).contains("practice usa has no cardinal-pass item");
    assertThat(refused.get(5).err()).contains("set.json: title:").contains("length:");
  }

  private static Outcome run(String... arguments) {
    PrintStream before = System.out;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StringWriter err = new StringWriter();
    System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
    try {
      int status =
          new CommandLine(new ScenariosCommand())
              .setErr(new PrintWriter(err, true))
              .execute(arguments);
      return new Outcome(status, out.toString(StandardCharsets.UTF_8), err.toString());
    } finally {
      System.setOut(before);
    }
  }
}
