package withy.usecase;

import java.util.List;

/** Thrown for a file that cannot be used as a water, with all that is wrong with it. */
public final class UnfitWater extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<WaterProblem> problems;

  public UnfitWater(List<WaterProblem> problems) {
    super(problems.size() + " problems, the first " + problems.get(0));
    this.problems = List.copyOf(problems);
  }

  /** All that is wrong, in the order of the file. */
  public List<WaterProblem> problems() {
    return problems;
  }
}
