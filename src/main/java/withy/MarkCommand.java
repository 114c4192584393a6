package withy;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Arrays;
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
import withy.core.Term;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.ColourPattern;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.mark.MarkingRules;
import withy.core.mark.NumberRules;
import withy.core.mark.Parity;
import withy.core.mark.Practice;
import withy.core.scenario.Chance;
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
    Optional<MarkKind> wanted = find(MarkKind.values(), kind);
    if (chosen.isEmpty()) {
      return refuse("drawn-mark.unknown-practice", practice, words(Practice.values()));
    }
    if (wanted.isEmpty()) {
      return refuse("drawn-mark.unknown-kind", kind, words(MarkKind.values()));
    }
    if (!MarkingRules.has(chosen.get(), wanted.get())) {
      return refuse("drawn-mark.kind-not-in-practice", kind, practice);
    }
    return write(chosen.get(), MarkingRules.look(chosen.get(), wanted.get()));
  }

  private int write(Practice chosen, MarkLook look) {
    Chance chance = Chance.of(seed, 0);
    Svg svg = night ? night(look, chance) : day(chosen, look, chance);
    if (spec != null) {
      spec.commandLine().getOut().println(svg);
    }
    return CommandLine.ExitCode.OK;
  }

  private static Svg day(Practice practice, MarkLook look, Chance chance) {
    List<Appearance> looks = looks(look, light(look, chance));
    return MarkDrawing.near(chance.pick(looks), label(practice, look, chance));
  }

  private static @Nullable LightCharacter light(MarkLook look, Chance chance) {
    int drawn = chance.below(look.lights().size() + 1);
    return drawn == 0 ? null : look.lights().get(drawn - 1);
  }

  /** Every body with and without the topmark, as far as the practice allows it. */
  private static List<Appearance> looks(MarkLook look, @Nullable LightCharacter light) {
    List<Appearance> looks = new ArrayList<>();
    for (BodyShape body : look.bodies()) {
      if (look.topmarkPossible(body)) {
        looks.add(look.appearance(body, true, light));
      }
      if (!look.topmarkRequired(body)) {
        looks.add(look.appearance(body, false, light));
      }
    }
    return looks;
  }

  /** A number of the right parity, a letter where there are no numbers, or nothing. */
  private static @Nullable String label(Practice practice, MarkLook look, Chance chance) {
    if (chance.oneIn(2) || look.pattern() == ColourPattern.VERTICAL) {
      return null;
    }
    Optional<Parity> parity = NumberRules.parity(practice.region(), look.kind());
    int even = 2 * chance.between(1, 14);
    String letter = String.valueOf((char) ('A' + even / 2 - 1));
    return parity.map(each -> String.valueOf(each == Parity.EVEN ? even : even - 1)).orElse(letter);
  }

  private static Svg night(MarkLook look, Chance chance) {
    LightCharacter light = chance.pick(look.lights());
    return MarkDrawing.night(light.timeline(), Lettering.ENGLISH, true);
  }

  private static <T extends Term> Optional<T> find(T[] terms, String word) {
    return Arrays.stream(terms).filter(each -> each.id().equals(word)).findFirst();
  }

  private static String words(Term[] terms) {
    return Arrays.stream(terms).map(Term::id).collect(Collectors.joining(", "));
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
