package withy.core.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import withy.core.item.Concept;

/**
 * What a course drills on one day.
 *
 * @param together whether the class meets for it; else everybody does it alone
 * @param first concepts met for the first time
 * @param again concepts met before
 * @param gap days since the session before, 0 of the first
 * @param daysLeft until the practical, 1 or more
 */
public record Session(
    LocalDate on,
    Purpose purpose,
    boolean together,
    List<Concept> first,
    List<Concept> again,
    int gap,
    int daysLeft) {
  public Session {
    first = List.copyOf(first);
    again = List.copyOf(again);
    if (gap < 0 || daysLeft < 1 || first.isEmpty() && again.isEmpty()) {
      throw new IllegalArgumentException("gap " + gap + ", days left " + daysLeft);
    }
  }

  /** The same so many days later, before a practical that is as much later; earlier if negative. */
  public Session later(long days) {
    return new Session(on.plusDays(days), purpose, together, first, again, gap, daysLeft);
  }

  /** All that is drilled, in syllabus order. */
  public List<Concept> concepts() {
    List<Concept> all = new ArrayList<>(first);
    all.addAll(again);
    all.sort(null);
    return List.copyOf(all);
  }
}
