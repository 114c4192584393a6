package withy;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import withy.core.Term;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.scenario.Chance;
import withy.drawing.Lettering;
import withy.drawing.MarkDrawing;
import withy.drawing.Svg;

/** Writes one mark as SVG. */
@Command(name = "mark", description = "Writes one mark as SVG to standard output.")
final class MarkCommand implements Callable<Integer> {
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
      description = "Chooses among the looks that the practice allows; 0 if not given.")
  private long seed;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    MarkLook look = look();
    Svg svg = night ? night(look) : day(look);
    PrintWriter out = spec.commandLine().getOut();
    out.println(svg);
    out.flush();
    return 0;
  }

  private MarkLook look() {
    try {
      Practice chosen = Term.parse(Practice.class, practice);
      return MarkingRules.look(chosen, Term.parse(MarkKind.class, kind));
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()), e);
    }
  }

  private Svg day(MarkLook look) {
    Chance chance = Chance.of(seed, 0);
    Appearance appearance = chance.pick(looks(look, chance));
    return MarkDrawing.near(appearance, null);
  }

  /** Every body with and without the topmark, as far as the practice allows it. */
  private static List<Appearance> looks(MarkLook look, Chance chance) {
    List<@Nullable LightCharacter> lights = new ArrayList<>(look.lights());
    lights.add(null);
    LightCharacter light = lights.get(chance.below(lights.size()));
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

  private Svg night(MarkLook look) {
    LightCharacter light = Chance.of(seed, 0).pick(look.lights());
    return MarkDrawing.night(light.timeline(), Lettering.ENGLISH, true);
  }
}
