package withy.core.measurement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Learners who could share a boat in the practical, since they need the same.
 *
 * @param learners by nickname
 * @param needs concepts that all of them most likely do not know; none where nothing is shared
 */
public record PracticalGroup(List<String> learners, List<String> needs) {
  public PracticalGroup {
    learners = List.copyOf(learners);
    needs = List.copyOf(needs);
  }

  /**
   * Groups of at most so many. The need that most learners share makes the first group, and so on
   * with those who are left; whoever shares no need comes together at the end.
   *
   * @param review of the class
   * @param most learners of a group, at least 2
   */
  public static List<PracticalGroup> of(Review review, int most) {
    SortedMap<String, SortedSet<String>> needs = new TreeMap<>();
    for (LearnerState each : review.learners()) {
      needs.computeIfAbsent(each.learner(), name -> new TreeSet<>());
      if (each.needsHelp()) {
        needs.get(each.learner()).add(each.concept());
      }
    }
    List<PracticalGroup> groups = new ArrayList<>();
    List<String> sharing = sharing(needs);
    while (sharing.size() > 1) {
      List<String> members = alike(sharing, needs).subList(0, Math.min(most, sharing.size()));
      groups.add(new PracticalGroup(members, shared(members, needs)));
      members.forEach(needs::remove);
      sharing = sharing(needs);
    }
    List<String> rest = new ArrayList<>(needs.keySet());
    for (int from = 0; from < rest.size(); from += most) {
      List<String> members = rest.subList(from, Math.min(rest.size(), from + most));
      groups.add(new PracticalGroup(members, shared(members, needs)));
    }
    return List.copyOf(groups);
  }

  /** Those who need what most need. */
  private static List<String> sharing(SortedMap<String, SortedSet<String>> needs) {
    SortedMap<String, List<String>> by = new TreeMap<>();
    needs.forEach(
        (learner, concepts) ->
            concepts.forEach(
                each -> by.computeIfAbsent(each, name -> new ArrayList<>()).add(learner)));
    return by.values().stream().max(Comparator.comparingInt(List::size)).orElse(List.of());
  }

  /** The first and those whose needs are most like theirs. */
  private static List<String> alike(
      List<String> learners, SortedMap<String, SortedSet<String>> needs) {
    SortedSet<String> first = needs.getOrDefault(learners.get(0), new TreeSet<>());
    return learners.stream()
        .sorted(
            Comparator.comparingLong(
                    (String each) ->
                        -needs.getOrDefault(each, new TreeSet<>()).stream()
                            .filter(first::contains)
                            .count())
                .thenComparing(each -> needs.getOrDefault(each, new TreeSet<>()).size())
                .thenComparing(each -> each))
        .toList();
  }

  private static List<String> shared(
      List<String> learners, SortedMap<String, SortedSet<String>> needs) {
    SortedSet<String> shared = new TreeSet<>(needs.getOrDefault(learners.get(0), new TreeSet<>()));
    learners.forEach(each -> shared.retainAll(needs.getOrDefault(each, new TreeSet<>())));
    return List.copyOf(shared);
  }
}
