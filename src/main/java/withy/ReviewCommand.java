package withy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import withy.core.measurement.Review;
import withy.core.response.Response;
import withy.exchange.MalformedResponses;
import withy.exchange.ResponsesCsv;
import withy.exchange.ReviewJson;
import withy.wording.Wording;

/** Reads responses from a file and prints what they say of the class as JSON. */
@Command(
    name = "review",
    description = "Prints the statistics of a class from its responses (CSV) as JSON.",
    mixinStandardHelpOptions = true)
final class ReviewCommand implements Callable<Integer> {
  private final Wording words = Wording.of(Locale.ENGLISH);

  @Spec private @Nullable CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "Responses as the export writes them.")
  private Path file = Path.of("");

  @Option(
      names = "--class-size",
      paramLabel = "N",
      description = "Learners in the class; those in the file unless given.")
  private @Nullable Integer classSize;

  @Override
  public Integer call() throws IOException {
    if (Files.isDirectory(file) || !Files.isReadable(file)) {
      return refuse("review.unreadable-file", file);
    }
    try (InputStream in = Files.newInputStream(file)) {
      return review(ResponsesCsv.read(in));
    } catch (MalformedResponses e) {
      return refuse("review.malformed-file", file, e.sentence(words));
    }
  }

  private int review(List<Response> responses) {
    int learners = Review.learners(responses);
    int size = classSize == null ? learners : classSize;
    if (size < learners || (classSize != null && size < 1)) {
      return refuse("review.class-too-small", String.valueOf(size), String.valueOf(learners));
    }
    // The bytes themselves: the encoding of the console must not touch a nickname.
    byte[] json =
        (ReviewJson.write(Review.of(responses, size)) + "\n").getBytes(StandardCharsets.UTF_8);
    System.out.write(json, 0, json.length);
    System.out.flush();
    return CommandLine.ExitCode.OK;
  }

  private int refuse(String key, Object... values) {
    String line = words.text(key, values);
    if (spec != null) {
      spec.commandLine().getErr().println(line.replaceAll("\\R", " "));
    }
    return CommandLine.ExitCode.USAGE;
  }
}
