package withy.core.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import withy.core.item.Concept;

/**
 * What to drill when, so that it is there at the practical. Sessions are equally far apart, by
 * {@link Spacing}; in each, all that was met comes back mixed. First meetings lie in the first
 * third of the time, so that the gap suits the days left of what is met last as well; that share,
 * two days for the end and a theme an evening are common practice, no source.
 */
public final class CoursePlan {
  /** The longest course, days. */
  public static final int LONGEST = 366;

  private static final int FIRST_PART = 3;

  private final LocalDate today;
  private final int days;
  private final int gap;
  private final Set<Concept> met = EnumSet.noneOf(Concept.class);
  private final List<Session> sessions = new ArrayList<>();
  private int evenings;
  private int lastDay;

  private CoursePlan(LocalDate today, int days, int evenings) {
    this.today = today;
    this.days = days;
    this.gap = Spacing.gap(days);
    this.evenings = evenings;
  }

  /**
   * The sessions, the first today, none on the day of the practical or after it.
   *
   * @param evenings on which the class meets, 1 or more; what goes beyond is done alone
   * @param concepts what the practical asks, at least one
   * @param needed those that the class most needs, the most needed first; their themes come first.
   *     Empty where nobody has answered
   * @throws IllegalArgumentException if the practical is not 1 to {@link #LONGEST} days off, or
   *     there are no evenings or concepts
   */
  public static List<Session> propose(
      LocalDate today,
      LocalDate practical,
      int evenings,
      List<Concept> concepts,
      List<Concept> needed) {
    long days = practical.toEpochDay() - today.toEpochDay();
    if (days < 1 || days > LONGEST || evenings < 1 || concepts.isEmpty()) {
      throw new IllegalArgumentException(
          days + " days, " + evenings + " evenings, " + concepts.size() + " concepts");
    }
    CoursePlan plan = new CoursePlan(today, (int) days, evenings);
    plan.lay(themes(concepts, needed));
    return List.copyOf(plan.sessions);
  }

  /** What is to be learned by theme, the most needed theme first. */
  private static List<List<Concept>> themes(List<Concept> concepts, List<Concept> needed) {
    List<Theme> order = new ArrayList<>(List.of(Theme.values()));
    order.sort(Comparator.comparingInt(theme -> rank(theme, needed)));
    return order.stream()
        .map(theme -> theme.concepts().stream().filter(concepts::contains).toList())
        .filter(wanted -> !wanted.isEmpty())
        .toList();
  }

  private static int rank(Theme theme, List<Concept> needed) {
    for (int i = 0; i < needed.size(); i++) {
      if (Theme.of(needed.get(i)) == theme) {
        return i;
      }
    }
    return needed.size();
  }

  private void lay(List<List<Concept>> themes) {
    int meetings = Math.min(Math.min(evenings, themes.size()), 1 + days / FIRST_PART / gap);
    for (int slot = 0; slot * gap < Math.max(1, days - 1); slot++) {
      session(slot * gap, slot < meetings ? part(themes, slot, meetings) : List.of());
    }
    readiness();
    add(days - 1, Purpose.REHEARSAL, List.of());
  }

  /** The themes of one of some meetings, whole themes as evenly as may be. */
  private static List<Concept> part(List<List<Concept>> themes, int meeting, int meetings) {
    int from = meeting * themes.size() / meetings;
    int to = (meeting + 1) * themes.size() / meetings;
    return themes.subList(from, to).stream().flatMap(List::stream).toList();
  }

  private void session(int day, List<Concept> first) {
    add(day, first.isEmpty() ? Purpose.RETURN : Purpose.FIRST_MEETING, first);
  }

  /** The last return shows who is ready; a course without any has no time to act on it. */
  private void readiness() {
    int last = sessions.size() - 1;
    Session found = sessions.get(last);
    if (found.purpose() == Purpose.RETURN) {
      sessions.set(
          last,
          new Session(
              found.on(),
              Purpose.READINESS,
              found.together(),
              found.first(),
              found.again(),
              found.gap(),
              found.daysLeft()));
    }
  }

  private void add(int day, Purpose purpose, List<Concept> first) {
    sessions.add(
        new Session(
            today.plusDays(day),
            purpose,
            evenings-- > 0,
            first,
            List.copyOf(met),
            sessions.isEmpty() ? 0 : day - lastDay,
            days - day));
    met.addAll(first);
    lastDay = day;
  }
}
