package withy.usecase;

import java.util.List;

/**
 * Something wrong with the file of a water.
 *
 * @param place in the file, as {@code features[12].properties.colour}; empty for the whole of it
 * @param key of its wording, after {@code water.problem.}
 * @param arguments that fill the places of the wording
 */
public record WaterProblem(String place, String key, List<Object> arguments) {
  public WaterProblem {
    arguments = List.copyOf(arguments);
  }
}
