package withy.usecase;

import java.util.List;

/**
 * Something wrong with the file of a drill set.
 *
 * @param place in the file, as {@code forms[1]}; empty for the whole of it
 * @param key of its wording, in full
 * @param arguments that fill the places of the wording
 */
public record DrillSetProblem(String place, String key, List<Object> arguments) {
  public DrillSetProblem {
    arguments = List.copyOf(arguments);
  }

  /** Something wrong with the file of the water that lies in the file of the drill set. */
  public static DrillSetProblem of(WaterProblem problem) {
    String inside = problem.place().isEmpty() ? "water" : "water." + problem.place();
    return new DrillSetProblem(inside, "water.problem." + problem.key(), problem.arguments());
  }
}
