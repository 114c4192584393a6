package withy.usecase;

import java.util.List;

/** Thrown for a file that cannot be used as a drill set, with all that is wrong with it. */
public final class UnfitDrillSet extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<DrillSetProblem> problems;

  public UnfitDrillSet(List<DrillSetProblem> problems) {
    super(problems.size() + " problems, the first " + problems.get(0));
    this.problems = List.copyOf(problems);
  }

  /** All that is wrong, in the order of the file. */
  public List<DrillSetProblem> problems() {
    return problems;
  }
}
