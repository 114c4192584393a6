package withy;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import withy.core.light.LightCharacter;
import withy.core.light.LightNotationException;
import withy.exchange.LightJson;
import withy.wording.LightFaults;
import withy.wording.Wording;

/** Reads a light character and prints its timeline. */
@Command(
    name = "light",
    description =
        "Reads a light character as charts and lists of lights write it, prints its timeline.",
    mixinStandardHelpOptions = true)
final class LightCommand implements Callable<Integer> {
  @Parameters(
      paramLabel = "CHARACTER",
      arity = "1..*",
      description = "For example Fl(2+1)R.10s, with or without spaces.")
  private List<String> words = List.of();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    spec.commandLine().getOut().println(LightJson.write(character()));
    return 0;
  }

  private LightCharacter character() {
    try {
      return LightCharacter.parse(String.join(" ", words));
    } catch (LightNotationException e) {
      throw new ParameterException(
          spec.commandLine(), LightFaults.sentence(e, Wording.of(Locale.ENGLISH)), e);
    }
  }
}
