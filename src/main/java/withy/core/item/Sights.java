package withy.core.item;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import withy.core.mark.MarkDescription;
import withy.core.mark.Practice;
import withy.core.scenario.View;

/** The sights that tell the marks of one practice, worked out once. */
final class Sights {
  /** Those of the practices known here; another one's are worked out as they are asked for. */
  private static final Map<Practice, Sights> ALL = new LinkedHashMap<>();

  static {
    for (Practice each : Practice.values()) {
      ALL.put(each, new Sights(each));
    }
  }

  private final Map<String, Map<View, List<Sight>>> byMark = new LinkedHashMap<>();

  private Sights(Practice practice) {
    for (MarkDescription each : practice.marks()) {
      Map<View, List<Sight>> views = new EnumMap<>(View.class);
      for (View view : View.values()) {
        views.put(view, Sight.of(practice, each, view));
      }
      byMark.put(each.id(), views);
    }
  }

  /** The sights of a mark in a view, none where it cannot be told in it. */
  static List<Sight> of(Practice practice, MarkDescription mark, View view) {
    Sights known = ALL.get(practice);
    Map<View, List<Sight>> views = known == null ? null : known.byMark.get(mark.id());
    return views == null ? Sight.of(practice, mark, view) : views.getOrDefault(view, List.of());
  }
}
