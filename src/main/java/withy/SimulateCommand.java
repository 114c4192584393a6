package withy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import withy.core.Term;
import withy.core.item.Concept;
import withy.core.mark.Practice;
import withy.core.simulation.Policy;
import withy.core.simulation.Population;
import withy.core.simulation.Simulation;
import withy.exchange.SimulationJson;
import withy.wording.Wording;

/** Drills planted classes and prints what of it the statistics find. */
@Command(
    name = "simulate",
    description = {
      "Plants misconceptions in invented learners, drills them with real items,",
      "and prints as JSON what the statistics find, beside the project's targets."
    },
    mixinStandardHelpOptions = true)
final class SimulateCommand implements Callable<Integer> {
  private static final int MOST_LEARNERS = 100_000;
  private static final int MOST_ITEMS = 200;
  private static final int FEWEST_ITEMS = 3;

  private final Wording words = Wording.of(Locale.ENGLISH);

  @Spec private @Nullable CommandSpec spec;

  @Option(names = "--learners", paramLabel = "N", description = "How many are planted; 2000.")
  private int learners = 2000;

  @Option(names = "--items", paramLabel = "N", description = "Length of each drill; 30.")
  private int items = 30;

  @Option(
      names = "--concept",
      paramLabel = "C",
      description = "A concept, twice or more often; eight unless given.")
  private List<String> concepts = new ArrayList<>();

  @Option(names = "--twelve", description = "Twelve concepts in place of eight.")
  private boolean twelve;

  @Option(names = "--practice", paramLabel = "P", description = "iala-a unless given.")
  private String practice = "iala-a";

  @Option(
      names = "--policy",
      paramLabel = "P",
      description =
          "fixed-blocked, round-robin, random or least-settled, more than once for several; all.")
  private List<String> policies = new ArrayList<>();

  @Option(
      names = "--learning",
      paramLabel = "SHARE",
      description = "Chance to learn from an item, 0 to 1; 0.")
  private double learning;

  @Option(names = "--noisy", description = "Learners whose answers follow less what they hold.")
  private boolean noisy;

  @Option(names = "--seed", paramLabel = "S", description = "What chance begins with; 1.")
  private long seed = 1;

  @Override
  public Integer call() {
    requireBetween("--learners", learners, 1, MOST_LEARNERS);
    requireBetween("--items", items, FEWEST_ITEMS, MOST_ITEMS);
    requireBetween("--learning", learning, 0, 1);
    Population population = (noisy ? Population.NOISY : Population.USUAL).learning(learning);
    Practice under = parsed("--practice", Practice.values(), practice);
    Simulation simulation = simulation(under, population);
    String json = SimulationJson.write(simulation, simulation.run(policies())) + "\n";
    byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
    System.out.write(bytes, 0, bytes.length);
    System.out.flush();
    return CommandLine.ExitCode.OK;
  }

  private Simulation simulation(Practice under, Population population) {
    try {
      return new Simulation(under, concepts(), population, learners, items, seed);
    } catch (IllegalArgumentException e) {
      throw refused("--concept", String.valueOf(e.getMessage()));
    }
  }

  private List<Concept> concepts() {
    if (concepts.isEmpty()) {
      return twelve ? Simulation.TWELVE : Simulation.EIGHT;
    }
    List<Concept> wanted = new ArrayList<>();
    for (String each : concepts) {
      wanted.add(parsed("--concept", List.of(Concept.values()), each));
    }
    return wanted.stream().distinct().toList();
  }

  private List<Policy> policies() {
    List<Policy> wanted = new ArrayList<>();
    for (String each : policies) {
      wanted.add(parsed("--policy", List.of(Policy.values()), each));
    }
    return wanted.isEmpty() ? List.of(Policy.values()) : wanted;
  }

  private <T extends Term> T parsed(String option, List<T> known, String word) {
    try {
      return Term.parse(known, word);
    } catch (IllegalArgumentException e) {
      throw refused(option, String.valueOf(e.getMessage()));
    }
  }

  private void requireBetween(String option, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw refused(option, words.text("simulate.outside", value, least, most));
    }
  }

  private ParameterException refused(String option, String why) {
    String line = words.text("simulate.option", option, why).replaceAll("\\R", " ");
    return new ParameterException(Objects.requireNonNull(spec).commandLine(), line);
  }
}
