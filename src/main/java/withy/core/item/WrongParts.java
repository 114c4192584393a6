package withy.core.item;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;

/**
 * The wrong parts of a mark that is to be put together. A belief that takes one mark for another
 * gives it the other's colours if it goes by them, the other's shape and topmark if it holds for
 * the silhouette, the other's light if it holds at night. Where fewer than three parts come
 * together so, those of other marks are added.
 */
final class WrongParts {
  private static final int MOST = 4;
  private static final int LEAST = 3;

  private final Task task;
  private final Scenario scenario;
  private final MarkDescription mark;
  private final Map<Feature, Part> right;
  private final Map<View, Scenario> views = new EnumMap<>(View.class);
  private final Map<Feature, Map<String, Part>> offered = new LinkedHashMap<>();
  private final Map<Map<Feature, String>, List<Misconception>> ways = new LinkedHashMap<>();

  private WrongParts(Task task, Scenario scenario, MarkDescription mark, Map<Feature, Part> right) {
    this.task = task;
    this.scenario = scenario;
    this.mark = mark;
    this.right = right;
    for (View view : View.values()) {
      views.put(view, seenIn(view, scenario));
    }
    right.forEach(this::offer);
  }

  static WrongParts of(
      Task task, Scenario scenario, MarkDescription mark, Map<Feature, Part> right) {
    WrongParts wrong = new WrongParts(task, scenario, mark, right);
    for (Misconception each : task.chance().shuffled(List.of(Misconception.values()))) {
      wrong.led(each);
    }
    wrong.fill();
    return wrong;
  }

  List<Slot> slots() {
    List<Slot> slots = new ArrayList<>();
    offered.forEach((feature, parts) -> slots.add(new Slot(feature, List.copyOf(parts.values()))));
    return slots;
  }

  /** Of several beliefs that lead to the same parts one is named, as among options. */
  List<Assembly.Belief> beliefs() {
    List<Assembly.Belief> beliefs = new ArrayList<>();
    ways.forEach(
        (parts, led) -> {
          Misconception named = Distractors.one(task, led);
          beliefs.add(new Assembly.Belief(parts, named, named.mistook(scenario)));
        });
    return beliefs;
  }

  private void led(Misconception belief) {
    Map<Feature, Part> parts = new LinkedHashMap<>();
    for (View view : View.values()) {
      taken(belief, view).ifPresent(other -> parts.putAll(seen(other, view)));
    }
    parts.keySet().retainAll(right.keySet());
    parts.entrySet().removeIf(each -> !isWrong(each.getKey(), each.getValue()));
    parts.entrySet().removeIf(each -> !offer(each.getKey(), each.getValue()));
    if (!parts.isEmpty()) {
      Map<Feature, String> values = new LinkedHashMap<>();
      parts.forEach((feature, part) -> values.put(feature, part.value()));
      ways.computeIfAbsent(values, none -> new ArrayList<>()).add(belief);
    }
  }

  /** The mark for which the belief takes this one in a view. */
  private Optional<MarkDescription> taken(Misconception belief, View view) {
    Scenario seen = views.get(view);
    @Nullable String kind = seen == null ? null : belief.answerOrNull(Form.IDENTIFY, seen);
    return kind == null ? Optional.empty() : task.practice().mark(new MarkKind(kind));
  }

  /** Near by without its topmark, so that what goes by colours is told from what goes by shape. */
  private static Scenario seenIn(View view, Scenario scenario) {
    TimeOfDay time = view == View.LIGHT ? TimeOfDay.NIGHT : TimeOfDay.DAY;
    Situation now = Situation.steering(scenario.situation().heading(), time, view);
    SightedMark mark = scenario.mark();
    Appearance all = mark.appearance();
    Appearance shown = view == View.NEAR ? all.topped(null) : all;
    SightedMark sighted =
        new SightedMark(mark.kind(), mark.bearing(), mark.distance(), null, shown);
    return new Scenario(scenario.practice(), now, List.of(sighted));
  }

  private Map<Feature, Part> seen(MarkDescription other, View view) {
    Map<Feature, Part> all = partsOf(other);
    all.keySet()
        .retainAll(
            switch (view) {
              case NEAR -> List.of(Feature.COLOURS);
              case DISTANT -> List.of(Feature.BODY, Feature.TOPMARK);
              case LIGHT -> List.of(Feature.LIGHT);
            });
    return all;
  }

  /** The parts of another mark; its light stands as far down its list as the right one in its. */
  private Map<Feature, Part> partsOf(MarkDescription other) {
    MarkLook look = other.look();
    int place = mark.look().lights().indexOf(scenario.mark().appearance().light());
    @Nullable LightCharacter light =
        look.lights().isEmpty()
            ? null
            : look.lights().get(Math.min(Math.max(place, 0), look.lights().size() - 1));
    return new LinkedHashMap<>(Parts.of(look, Parts.whole(look, light)));
  }

  private boolean isWrong(Feature feature, Part part) {
    Part truth = right.get(feature);
    boolean same = truth != null && truth.value().equals(part.value());
    return !same && !(feature == Feature.LIGHT && mayShow(part));
  }

  private boolean mayShow(Part part) {
    @Nullable LightCharacter light = part.look() == null ? null : part.look().light();
    return light != null && mark.lightLimit().allows(light);
  }

  /** Whether the part is now among those offered. */
  private boolean offer(Feature feature, Part part) {
    Map<String, Part> parts = offered.computeIfAbsent(feature, none -> new LinkedHashMap<>());
    if (parts.size() <= MOST) {
      parts.putIfAbsent(part.value(), part);
    }
    return parts.containsKey(part.value());
  }

  private void fill() {
    if (right.containsKey(Feature.BODY)) {
      offer(Feature.BODY, Parts.body(BodyShape.SPHERICAL));
    }
    for (MarkDescription each : task.chance().shuffled(task.practice().marks())) {
      if (each.telling() != null && !each.look().isFixed()) {
        partsOf(each)
            .forEach(
                (feature, part) -> {
                  if (right.containsKey(feature) && lacks(feature) && isWrong(feature, part)) {
                    offer(feature, part);
                  }
                });
      }
    }
  }

  private boolean lacks(Feature feature) {
    Map<String, Part> parts = offered.get(feature);
    return parts == null || parts.size() <= LEAST;
  }
}
