package withy;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.fixture.Answer.by;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import withy.core.measurement.Review;
import withy.core.response.Response;
import withy.exchange.ResponsesCsv;
import withy.exchange.ReviewJson;

class ReviewCommandTest {
  private static final List<Response> RESPONSES =
      List.of(by("Åse").right(), by("Bo").wrong(), by("船長").notSure());

  @TempDir private Path folder;
  private final PrintStream console = System.out;
  private final ByteArrayOutputStream printed = new ByteArrayOutputStream();
  private final StringWriter complaints = new StringWriter();

  @BeforeEach
  void listen() {
    System.setOut(new PrintStream(printed, true, StandardCharsets.US_ASCII));
  }

  @AfterEach
  void stopListening() {
    System.setOut(console);
  }

  @Test
  void printsTheReviewAloneInUtf8WhateverTheConsoleSpeaks() throws IOException {
    assertThat(run(file(RESPONSES).toString())).isZero();
    assertThat(printed.toString(StandardCharsets.UTF_8))
        .isEqualTo(ReviewJson.write(Review.of(RESPONSES)) + "\n")
        .contains("船長");
    assertThat(complaints.toString()).isEmpty();
  }

  @Test
  void takesTheSizeOfTheClassWhereItIsGiven() throws IOException {
    assertThat(run("--class-size", "12", file(RESPONSES).toString())).isZero();
    assertThat(printed.toString(StandardCharsets.UTF_8))
        .isEqualTo(ReviewJson.write(Review.of(RESPONSES, 12)) + "\n");
  }

  @Test
  void reviewsAFileWithoutResponses() throws IOException {
    assertThat(run(file(List.of()).toString())).isZero();
    assertThat(printed.toString(StandardCharsets.UTF_8)).startsWith("{\"concepts\":[]");
  }

  @Test
  void refusesAClassSmallerThanTheFile() throws IOException {
    assertRefused("2", "--class-size", "2", file(RESPONSES).toString());
    assertRefused("0", "--class-size", "0", file(List.of()).toString());
  }

  @Test
  void refusesWhatIsNoFile() {
    assertRefused("missing.csv", folder.resolve("missing.csv").toString());
    assertRefused(folder.getFileName().toString(), folder.toString());
  }

  @Test
  void saysInWhichRowAndColumnAFileIsWrong() throws IOException {
    Path file = file(RESPONSES);
    String text = Files.readString(file).replaceFirst("09:00:00Z", "nine");
    Files.writeString(file, text);
    assertRefused("responses.csv: row 2, column answeredAt: ", file.toString());
  }

  @Test
  void refusesAFileInAnotherEncoding() throws IOException {
    Path file = file(RESPONSES);
    Files.write(file, Files.readString(file).getBytes(StandardCharsets.UTF_16));
    assertRefused("UTF-8", file.toString());
  }

  private void assertRefused(String saying, String... args) {
    complaints.getBuffer().setLength(0);
    assertThat(run(args)).isEqualTo(2);
    assertThat(printed.size()).isZero();
    assertThat(complaints.toString()).contains(saying).hasLineCount(1);
  }

  private Path file(List<Response> responses) throws IOException {
    StringBuilder csv = new StringBuilder();
    ResponsesCsv.write(responses, csv);
    return Files.writeString(folder.resolve("responses.csv"), csv);
  }

  private int run(String... args) {
    return new CommandLine(new ReviewCommand())
        .setErr(new PrintWriter(complaints, true))
        .execute(args);
  }
}
