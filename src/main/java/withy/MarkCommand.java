package withy;

import java.text.MessageFormat;
import java.util.List;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import withy.core.Chance;
import withy.core.Term;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.ColourPattern;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.mark.NumberRules;
import withy.core.mark.Parity;
import withy.core.mark.Practice;
import withy.drawing.Lettering;
import withy.drawing.MarkDrawing;
import withy.drawing.Svg;

/** Writes one mark as SVG. */
@Command(
    name = "mark",
    description = "Writes one mark as SVG to standard output.",
    mixinStandardHelpOptions = true)
final class MarkCommand implements Callable<Integer> {
  @Spec private @Nullable CommandSpec spec;

  @Parameters(paramLabel = "KIND", description = "The kind of mark, for example north-cardinal.")
  private String kind = "";

  @Option(
      names = "--practice",
      required = true,
      paramLabel = "P",
      description = "iala-a, iala-b, canada or usa.")
  private String practice = "";

  @Option(names = "--night", description = "Its light in the dark, at its true rhythm.")
  private boolean night;

  @Option(
      names = "--seed",
      paramLabel = "S",
      defaultValue = "0",
      description = "Chooses among the looks that the practice allows; 0 unless given.")
  private long seed;

  @Override
  public Integer call() {
    Optional<Practice> chosen = find(Practice.values(), practice);
    if (chosen.isEmpty()) {
      return refuse("drawn-mark.unknown-practice", practice, words(Practice.values()));
    }
    Optional<MarkDescription> mark = mark(chosen.get());
    if (mark.isPresent()) {
      return write(chosen.get(), mark.get());
    }
    return find(everyKind(), kind).isPresent()
        ? refuse("drawn-mark.kind-not-in-practice", kind, practice)
        : refuse("drawn-mark.unknown-kind", kind, words(everyKind()));
  }

  /** The mark that stands for a kind, or the one of an id, as the pages of marks have it. */
  private Optional<MarkDescription> mark(Practice chosen) {
    return find(chosen.kinds(), kind).flatMap(chosen::mark).or(() -> chosen.mark(kind));
  }

  private static List<MarkKind> everyKind() {
    return Practice.values().stream().flatMap(each -> each.kinds().stream()).distinct().toList();
  }

  private int write(Practice chosen, MarkDescription mark) {
    Chance chance = Chance.of(seed, 0);
    if (night && mark.look().lights().isEmpty()) {
      return refuse("drawn-mark.unlit", kind, practice);
    }
    Svg svg = night ? night(mark.look(), chance) : day(chosen, mark, chance);
    if (spec != null) {
      spec.commandLine().getOut().println(svg);
    }
    return CommandLine.ExitCode.OK;
  }

  private static Svg day(Practice practice, MarkDescription mark, Chance chance) {
    List<Appearance> looks = mark.look().appearances(light(mark.look(), chance));
    return MarkDrawing.near(chance.pick(looks), label(practice, mark, chance));
  }

  private static @Nullable LightCharacter light(MarkLook look, Chance chance) {
    int drawn = chance.below(look.lights().size() + 1);
    return drawn == 0 ? null : look.lights().get(drawn - 1);
  }

  /** A number of the right parity, a letter where there are no numbers, or nothing. */
  private static @Nullable String label(Practice practice, MarkDescription mark, Chance chance) {
    boolean striped = mark.look().pattern() == ColourPattern.VERTICAL;
    int even = 2 * chance.between(1, 14);
    if (chance.oneIn(2) || striped) {
      return null;
    }
    return switch (mark.numbering()) {
      case NUMBERED ->
          NumberRules.parity(practice.region(), mark.kind())
              .map(each -> String.valueOf(each == Parity.EVEN ? even : even - 1))
              .orElse(null);
      case LETTERED -> String.valueOf((char) ('A' + even / 2 - 1));
      case PRIV -> "PRIV";
      case RIVER_MILES, WORDED, BARE -> null;
    };
  }

  private static Svg night(MarkLook look, Chance chance) {
    LightCharacter light = chance.pick(look.lights());
    return MarkDrawing.night(light.timeline(), Lettering.ENGLISH, true);
  }

  private static <T extends Term> Optional<T> find(List<T> terms, String word) {
    return terms.stream().filter(each -> each.id().equals(word)).findFirst();
  }

  private static String words(List<? extends Term> terms) {
    return terms.stream().map(Term::id).collect(Collectors.joining(", "));
  }

  private int refuse(String key, Object... values) {
    ResourceBundle words = ResourceBundle.getBundle("messages");
    if (spec != null) {
      String line = new MessageFormat(words.getString(key)).format(values);
      spec.commandLine().getErr().println(line.replaceAll("\\R", " "));
    }
    return CommandLine.ExitCode.USAGE;
  }
}
