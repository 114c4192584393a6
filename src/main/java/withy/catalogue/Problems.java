package withy.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import withy.usecase.WaterProblem;

/** What is found wrong with a file while it is read: none is lost, none stops the reading. */
final class Problems {
  private static final Pattern FEATURE = Pattern.compile("features\\[(\\d+)]");
  private static final Comparator<WaterProblem> BY_FEATURE =
      Comparator.comparingInt(Problems::feature);

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

  /** How many make the file unfit. */
  int size() {
    return problems.size();
  }

  /** What makes the file unfit, in the order of the file. */
  List<WaterProblem> problems() {
    return problems.stream().sorted(BY_FEATURE).toList();
  }

  /** What is odd, in the order of the file. */
  List<WaterProblem> remarks() {
    return remarks.stream().sorted(BY_FEATURE).toList();
  }

  /** The number of the feature at a place; what concerns the whole file comes first. */
  private static int feature(WaterProblem problem) {
    Matcher matcher = FEATURE.matcher(problem.place());
    return matcher.lookingAt() ? Integer.parseInt(matcher.group(1)) : -1;
  }
}
