package withy.core.item;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.hydrography.SurveyedWater;
import withy.core.mark.Practice;
import withy.core.scenario.TimeOfDay;

/** What can be drawn under one practice: for each concept the forms and times that measure it. */
final class Menu {
  private static final List<ItemWriter> WRITERS =
      List.of(
          new IdentifyWriter(),
          new SideWriter(),
          new ChannelChoiceWriter(),
          new CardinalPassWriter(),
          new DirectionWriter(),
          new LightWriter(),
          new AssembleWriter(),
          new RangeWriter(),
          new SectorWriter(),
          new NumberWriter(),
          new LeadingWriter(),
          new ClearanceWriter(),
          new ChartOverRuleWriter(),
          new RegulatoryWriter(),
          new PassageWriter());

  /** Those of the practices known here; another one's is worked out whenever it is asked for. */
  private static final Map<Practice, Menu> MENUS = new LinkedHashMap<>();

  static {
    for (Practice each : Practice.values()) {
      MENUS.put(each, new Menu(each));
    }
  }

  /** A form that measures a concept, by day, at night or at both. */
  record Course(Concept concept, ItemWriter writer, List<TimeOfDay> times) {
    boolean allowed(Composition composition) {
      TimeOfDay time = composition.time();
      return (time == null ? !times.isEmpty() : times.contains(time))
          && (composition.forms().isEmpty() || composition.forms().contains(writer.form()));
    }

    TimeOfDay time(@Nullable TimeOfDay wanted, Chance chance) {
      return wanted == null ? chance.pick(times) : wanted;
    }
  }

  private final Practice practice;
  private final List<List<Course>> byConcept = new ArrayList<>();

  private Menu(Practice practice) {
    this.practice = practice;
    for (Concept each : Concept.values()) {
      List<Course> courses = courses(each);
      if (!courses.isEmpty()) {
        byConcept.add(courses);
      }
    }
  }

  static Menu of(Practice practice) {
    Menu known = MENUS.get(practice);
    return known == null ? new Menu(practice) : known;
  }

  private List<Course> courses(Concept concept) {
    List<Course> courses = new ArrayList<>();
    for (ItemWriter writer : WRITERS) {
      List<TimeOfDay> times = times(each -> writer.measures(concept, practice, each));
      if (!times.isEmpty()) {
        courses.add(new Course(concept, writer, times));
      }
    }
    return List.copyOf(courses);
  }

  private static List<TimeOfDay> times(Predicate<TimeOfDay> fitting) {
    return Stream.of(TimeOfDay.values()).filter(fitting).toList();
  }

  /** The courses that a composition allows, one list for each concept, none of them empty. */
  List<List<Course>> allowed(Composition composition) {
    List<List<Course>> allowed = new ArrayList<>(byConcept.size());
    for (List<Course> courses : byConcept) {
      Concept concept = courses.get(0).concept();
      if (composition.concepts().isEmpty() || composition.concepts().contains(concept)) {
        List<Course> kept = allowed(courses, composition);
        if (!kept.isEmpty()) {
          allowed.add(kept);
        }
      }
    }
    return allowed;
  }

  private List<Course> allowed(List<Course> courses, Composition composition) {
    List<Course> kept = new ArrayList<>(courses.size());
    for (Course each : courses) {
      if (each.allowed(composition)) {
        Course set = set(each, composition.water());
        Course graded = graded(set, composition);
        if (graded.allowed(composition)) {
          kept.add(graded);
        }
      }
    }
    return kept;
  }

  /** A course as it can be set in a water of its own; to find out, the water's marks are sailed. */
  private Course set(Course course, @Nullable SurveyedWater water) {
    if (water == null) {
      return course;
    }
    List<TimeOfDay> times =
        times(
            each ->
                course.times().contains(each)
                    && course.writer().measuresIn(water, course.concept(), practice, each));
    return new Course(course.concept(), course.writer(), times);
  }

  /** A course at the times at which some of its items are as hard as asked for. */
  private Course graded(Course course, Composition composition) {
    Difficulty difficulty = composition.difficulty();
    if (difficulty == null) {
      return course;
    }
    List<TimeOfDay> times =
        times(
            each ->
                course.times().contains(each)
                    && (composition.time() == null || composition.time() == each)
                    && graded(course, each, composition, difficulty).exists());
    return new Course(course.concept(), course.writer(), times);
  }

  private Graded graded(
      Course course, TimeOfDay time, Composition composition, Difficulty difficulty) {
    return new Graded(
        practice, course.concept(), course.writer(), time, composition.water(), difficulty);
  }

  /** An item of a course that the composition allows. */
  Item item(Course course, Composition composition, Chance chance, long seed, int index) {
    TimeOfDay time = course.time(composition.time(), chance);
    Difficulty difficulty = composition.difficulty();
    if (difficulty != null) {
      return graded(course, time, composition, difficulty).item(chance, seed, index);
    }
    Task task = new Task(practice, course.concept(), time, index, chance, composition.water());
    return course.writer().write(task).item(task, seed, index);
  }
}
