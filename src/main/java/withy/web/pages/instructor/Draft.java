package withy.web.pages.instructor;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Difficulty;
import withy.core.item.Form;
import withy.core.mark.Practice;
import withy.core.response.DrillKind;
import withy.core.scenario.TimeOfDay;
import withy.usecase.AssignDrill;
import withy.web.pages.Days;

/**
 * A drill as it stands in the form in which it is composed, typed well or not.
 *
 * @param time day, night or both
 * @param water in which all items lie; null where waters are generated
 * @param practice under which items are drawn; null for that of the class
 * @param difficulty of every item; null for any
 * @param opens when it opens, as typed
 * @param turn counts how often a sample was asked for, so that each time it is another
 * @param seed of a fixed drill, so that the one that is assigned is the one that was looked at; 0
 *     before it has any
 */
record Draft(
    List<String> concepts,
    List<String> forms,
    String time,
    String length,
    String title,
    String due,
    long turn,
    @Nullable SurveyedWater water,
    DrillKind kind,
    String opens,
    @Nullable Practice practice,
    @Nullable Difficulty difficulty,
    long seed) {
  static final String BOTH = "both";
  private static final String USUAL_LENGTH = "12";

  static Draft empty() {
    return new Draft(
        List.of(),
        List.of(),
        BOTH,
        USUAL_LENGTH,
        "",
        "",
        0,
        null,
        DrillKind.ADAPTIVE,
        "",
        null,
        null,
        0);
  }

  static Draft of(Composition composition, String title) {
    List<String> concepts = composition.concepts().stream().map(Term::id).toList();
    List<String> forms = composition.forms().stream().map(Term::id).toList();
    String length = Integer.toString(composition.length());
    TimeOfDay time = composition.time();
    return new Draft(
        concepts,
        forms,
        time == null ? BOTH : time.id(),
        length,
        title,
        "",
        0,
        composition.water(),
        DrillKind.ADAPTIVE,
        "",
        composition.practice(),
        composition.difficulty(),
        0);
  }

  static Draft typed(withy.web.pages.Form form, @Nullable SurveyedWater water) {
    return new Draft(
        form.all("concept"),
        form.all("form"),
        form.text("time").isEmpty() ? BOTH : form.text("time"),
        form.text("length"),
        form.text("title"),
        form.text("due"),
        number(form.text("turn")),
        water,
        chosen(List.of(DrillKind.values()), form.text("kind")).orElse(DrillKind.ADAPTIVE),
        form.text("opens"),
        chosen(Practice.values(), form.text("practice")).orElse(null),
        chosen(List.of(Difficulty.values()), form.text("difficulty")).orElse(null),
        number(form.text("seed")));
  }

  /** What no form sends is taken for the usual. */
  private static <T extends Term> Optional<T> chosen(List<T> known, String typed) {
    return known.stream().filter(each -> each.id().equals(typed)).findFirst();
  }

  private static long number(String typed) {
    try {
      return Long.parseLong(typed);
    } catch (NumberFormatException none) {
      return 0;
    }
  }

  /** With the next sample. */
  Draft turned() {
    return with(turn + 1, seed);
  }

  /** With a seed, unless it has one. */
  Draft seeded(long drawn) {
    return with(turn, seed == 0 ? drawn : seed);
  }

  private Draft with(long turned, long seeded) {
    return new Draft(
        concepts,
        forms,
        time,
        length,
        title,
        due,
        turned,
        water,
        kind,
        opens,
        practice,
        difficulty,
        seeded);
  }

  /** What it composes, each part of it once; empty if a field does not hold what it must. */
  Optional<Composition> composition() {
    try {
      List<Concept> measured = new ArrayList<>();
      concepts.stream().distinct().forEach(each -> measured.add(Term.parse(Concept.class, each)));
      List<Form> used = new ArrayList<>();
      forms.stream().distinct().forEach(each -> used.add(Term.parse(Form.class, each)));
      return Optional.of(
          new Composition(measured, used, timeOfDay(), items(), water, practice, difficulty));
    } catch (IllegalArgumentException unfit) {
      return Optional.empty();
    }
  }

  private @Nullable TimeOfDay timeOfDay() {
    return time.equals(BOTH) ? null : Term.parse(TimeOfDay.class, time);
  }

  private int items() {
    return Integer.parseInt(length.strip());
  }

  /** Whether the length is a number of items that a drill can have. */
  boolean lengthFits() {
    try {
      return items() >= 1 && items() <= Composition.LONGEST;
    } catch (NumberFormatException none) {
      return false;
    }
  }

  /** Whether the due time is empty or can be read. */
  boolean dueFits(Days days) {
    return due.isEmpty() || days.read(due).isPresent();
  }

  /** Whether the time at which it opens is empty or can be read. */
  boolean opensFits(Days days) {
    return opens.isEmpty() || days.read(opens).isPresent();
  }

  /** How it shall be done, by the whole class. */
  AssignDrill.Wanted wanted(Days days) {
    Instant at = opens.isEmpty() ? null : days.read(opens).orElse(null);
    return new AssignDrill.Wanted(kind, at, List.of(), seed == 0 ? null : seed);
  }

  /** When it is due; null when there is no hurry. */
  @Nullable Instant dueAt(Days days) {
    return due.isEmpty() ? null : days.read(due).orElse(null);
  }
}
