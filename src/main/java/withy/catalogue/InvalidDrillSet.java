package withy.catalogue;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import withy.usecase.DrillSetProblem;

/** A drill set that cannot be used, with all that is wrong with it. */
public final class InvalidDrillSet extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final transient List<DrillSetProblem> problems;

  InvalidDrillSet(String file, List<DrillSetProblem> problems) {
    super(
        problems.stream()
            .map(InvalidDrillSet::sentence)
            .collect(Collectors.joining("; ", file + ": ", "")));
    this.problems = List.copyOf(problems);
  }

  /** All that is wrong, in the order in which it was found. */
  List<DrillSetProblem> problems() {
    return problems;
  }

  /** For the command line, which speaks English. */
  private static String sentence(DrillSetProblem problem) {
    String pattern = ResourceBundle.getBundle("messages", Locale.ENGLISH).getString(problem.key());
    String text = new MessageFormat(pattern, Locale.ENGLISH).format(problem.arguments().toArray());
    return problem.place().isEmpty() ? text : problem.place() + ": " + text;
  }
}
