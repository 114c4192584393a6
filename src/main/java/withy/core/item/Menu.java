package withy.core.item;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.hydrography.SurveyedWater;
import withy.core.mark.Practice;
import withy.core.scenario.TimeOfDay;

/**
 * What can be drawn under one practice, anywhere or in one water: for each concept the forms and
 * times that measure it.
 */
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
      MENUS.put(each, new Menu(each, null));
    }
  }

  /** A form that measures a concept, by day, at night or at both. */
  record Course(Concept concept, ItemWriter writer, List<TimeOfDay> times) {
    boolean allowed(Composition composition) {
      TimeOfDay time = composition.time();
      return (time == null || times.contains(time))
          && (composition.forms().isEmpty() || composition.forms().contains(writer.form()));
    }

    TimeOfDay time(@Nullable TimeOfDay wanted, Chance chance) {
      return wanted == null ? chance.pick(times) : wanted;
    }
  }

  private final Practice practice;
  private final List<List<Course>> byConcept = new ArrayList<>();

  /** The water in which all must lie; null where it need not. */
  private final @Nullable SurveyedWater water;

  private Menu(Practice practice, @Nullable Composition composition) {
    this.practice = practice;
    this.water = composition == null ? null : composition.water();
    for (Concept each : Concept.values()) {
      if (composition == null || isWanted(each, composition)) {
        List<Course> courses = courses(each, composition);
        if (!courses.isEmpty()) {
          byConcept.add(courses);
        }
      }
    }
  }

  private static boolean isWanted(Concept concept, Composition composition) {
    return composition.concepts().isEmpty() || composition.concepts().contains(concept);
  }

  static Menu of(Practice practice) {
    Menu known = MENUS.get(practice);
    return known == null ? new Menu(practice, null) : known;
  }

  /** In a water of its own no more is looked for than the composition wants: that takes a while. */
  static Menu of(Practice practice, Composition composition) {
    return composition.water() == null ? of(practice) : new Menu(practice, composition);
  }

  private List<Course> courses(Concept concept, @Nullable Composition composition) {
    List<Course> courses = new ArrayList<>();
    for (ItemWriter writer : WRITERS) {
      boolean unwanted =
          composition != null
              && !composition.forms().isEmpty()
              && !composition.forms().contains(writer.form());
      if (unwanted) {
        continue;
      }
      List<TimeOfDay> times = new ArrayList<>();
      for (TimeOfDay each : TimeOfDay.values()) {
        if (measures(writer, concept, each)) {
          times.add(each);
        }
      }
      if (!times.isEmpty()) {
        courses.add(new Course(concept, writer, List.copyOf(times)));
      }
    }
    return List.copyOf(courses);
  }

  private boolean measures(ItemWriter writer, Concept concept, TimeOfDay time) {
    return writer.measures(concept, practice, time)
        && (water == null || writer.measuresIn(water, concept, practice, time));
  }

  /** The courses that a composition allows, one list for each concept, none of them empty. */
  List<List<Course>> allowed(Composition composition) {
    List<List<Course>> allowed = new ArrayList<>(byConcept.size());
    for (List<Course> courses : byConcept) {
      if (isWanted(courses.get(0).concept(), composition)) {
        List<Course> kept = allowed(courses, composition);
        if (!kept.isEmpty()) {
          allowed.add(kept);
        }
      }
    }
    return allowed;
  }

  private static List<Course> allowed(List<Course> courses, Composition composition) {
    List<Course> kept = new ArrayList<>(courses.size());
    for (Course each : courses) {
      if (each.allowed(composition)) {
        kept.add(each);
      }
    }
    return kept;
  }
}
