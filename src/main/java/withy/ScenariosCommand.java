package withy;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import withy.catalogue.DrillSetReader;
import withy.core.Term;
import withy.core.item.Composition;
import withy.core.item.Form;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.exchange.ItemJson;
import withy.wording.ItemWording;
import withy.wording.Wording;

/** Writes items with their keys as JSON Lines; the same arguments give the same bytes anywhere. */
@Command(
    name = "scenarios",
    description = "Writes items with their keys as JSON Lines.",
    mixinStandardHelpOptions = true)
final class ScenariosCommand implements Callable<Integer> {
  private static final long PATIENCE_NANOS = 2_000_000_000L;

  @Spec private @Nullable CommandSpec spec;

  @Option(
      names = "--practice",
      paramLabel = "P",
      description = "iala-a, iala-b, canada or usa; that of the set unless given.")
  private @Nullable String practice;

  @Option(
      names = "--form",
      paramLabel = "F",
      description = "A form of item, more than once for several; all of the set's unless given.")
  private List<String> forms = new ArrayList<>();

  @Option(
      names = "--count",
      paramLabel = "N",
      description = "How many items; the length of the set, or 10, unless given.")
  private @Nullable Integer count;

  @Option(names = "--seed", paramLabel = "S", description = "What chance begins with; 1.")
  private long seed = 1;

  @Option(names = "--set", paramLabel = "FILE", description = "A drill set to draw from.")
  private @Nullable Path set;

  private final Wording words = Wording.of(Locale.ENGLISH);

  @Override
  public Integer call() {
    Practice under;
    Composition composition;
    int items;
    try {
      composition = composition();
      under = practice(composition);
      composition = composition.under(under);
      items = items(composition);
      ItemGenerator.item(under, composition, seed, 0);
    } catch (IllegalArgumentException e) {
      return refuse(String.valueOf(e.getMessage()));
    }
    write(under, composition, items);
    return CommandLine.ExitCode.OK;
  }

  private Practice practice(Composition set) {
    if (practice != null) {
      return parsed("--practice", Practice.values(), practice);
    }
    Practice own = set.practice();
    if (own == null) {
      throw new Refusal(words.text("scenarios.no-practice"));
    }
    return own;
  }

  private int items(Composition composition) {
    int items = count == null ? composition.length() : count;
    if (items < 0) {
      throw new Refusal(words.text("scenarios.count", String.valueOf(items)));
    }
    return items;
  }

  private Composition composition() {
    Composition base = set == null ? new Composition(List.of(), List.of(), null, 10) : read(set);
    if (forms.isEmpty()) {
      return base;
    }
    List<Form> wanted = new ArrayList<>();
    for (String each : forms) {
      wanted.add(parsed("--form", List.of(Form.values()), each));
    }
    return base.by(wanted);
  }

  private Composition read(Path file) {
    String text;
    try {
      text = Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new Refusal(words.text("scenarios.unreadable-set", file.toString()));
    }
    return DrillSetReader.read(file.toString(), text).composition();
  }

  private <T extends Term> T parsed(String option, List<T> known, String word) {
    try {
      return Term.parse(known, word);
    } catch (IllegalArgumentException e) {
      throw new Refusal(words.text("scenarios.option", option, String.valueOf(e.getMessage())));
    }
  }

  /** Bytes with LF, whatever encoding and line's end the machine has. */
  private void write(Practice under, Composition composition, int items) {
    ItemWording wording = new ItemWording(words);
    PrintStream out = new PrintStream(new BufferedOutputStream(System.out, 1 << 16), false);
    long shown = System.nanoTime();
    for (int index = 0; index < items; index++) {
      String line =
          ItemJson.line(ItemGenerator.item(under, composition, seed, index), wording) + "\n";
      byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
      out.write(bytes, 0, bytes.length);
      shown = progress(shown, index, items);
    }
    out.flush();
  }

  /** To a person who waits, now and then how far it is. */
  private long progress(long shown, int index, int items) {
    if (System.console() == null || System.nanoTime() - shown < PATIENCE_NANOS) {
      return shown;
    }
    System.err.println(words.text("scenarios.progress", index + 1, items));
    return System.nanoTime();
  }

  private int refuse(String line) {
    if (spec != null) {
      spec.commandLine().getErr().println(line.replaceAll("\\R", " "));
    }
    return CommandLine.ExitCode.USAGE;
  }

  /** An argument that cannot be used, said in one line. */
  private static final class Refusal extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    Refusal(String line) {
      super(line);
    }
  }
}
