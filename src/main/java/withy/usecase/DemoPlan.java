package withy.usecase;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import withy.core.item.Composition;
import withy.core.item.Misconception;
import withy.core.mark.Practice;
import withy.core.response.DrillKind;

/**
 * An invented class, with what its learners believe and how far they are.
 *
 * @param drills the oldest first
 */
public record DemoPlan(String name, Practice practice, List<Member> members, List<Drill> drills) {

  /**
   * @throws IllegalArgumentException if a learner is not said to have answered so many of each
   *     drill
   */
  public DemoPlan {
    members = List.copyOf(members);
    drills = List.copyOf(drills);
    for (Member each : members) {
      if (each.answered().size() != drills.size()) {
        throw new IllegalArgumentException(each.nickname() + ": one number for each drill");
      }
    }
  }

  /**
   * A learner of the class.
   *
   * @param beliefs what the learner has got wrong at first
   * @param mended which of these the feedback has mended, by the drill in which none is left of it;
   *     0 is the oldest
   * @param slip chance of an answer that no belief explains, or of none, 0 to 1
   * @param answered items of each drill
   */
  public record Member(
      String nickname,
      List<Misconception> beliefs,
      SortedMap<Misconception, Integer> mended,
      double slip,
      int secondsPerItem,
      List<Integer> answered) {
    public Member {
      beliefs = List.copyOf(beliefs);
      mended = Collections.unmodifiableSortedMap(new TreeMap<>(mended));
      answered = List.copyOf(answered);
      if (!(slip >= 0 && slip <= 1)) {
        throw new IllegalArgumentException(nickname + ": slip " + slip + " is no chance");
      }
      if (!beliefs.containsAll(mended.keySet())) {
        throw new IllegalArgumentException(nickname + ": mends what was never believed");
      }
    }

    /** What the learner still believes in a drill; 0 is the oldest. */
    List<Misconception> beliefsIn(int drill) {
      return beliefs.stream()
          .filter(each -> mended.getOrDefault(each, Integer.MAX_VALUE) > drill)
          .toList();
    }
  }

  /**
   * A drill that the class was assigned, and did in one evening.
   *
   * @param dueInDays from today; negative in the past
   */
  public record Drill(
      String title, DrillKind kind, Composition composition, int assignedDaysAgo, int dueInDays) {}
}
