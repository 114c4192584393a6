package withy.catalogue;

import java.util.ArrayList;
import java.util.List;
import withy.usecase.WaterProblem;

/** What is found wrong with a file while it is read: none is lost, none stops the reading. */
final class Problems {
  private final List<WaterProblem> problems = new ArrayList<>();
  private final List<WaterProblem> remarks = new ArrayList<>();

  /** Notes what makes the file unfit. */
  void add(String place, String key, Object... arguments) {
    problems.add(new WaterProblem(place, key, List.of(arguments)));
  }

  /** Notes what is odd. */
  void remark(String place, String key, Object... arguments) {
    remarks.add(new WaterProblem(place, key, List.of(arguments)));
  }

  boolean isEmpty() {
    return problems.isEmpty();
  }

  List<WaterProblem> problems() {
    return problems;
  }

  List<WaterProblem> remarks() {
    return remarks;
  }
}
