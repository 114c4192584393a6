package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import withy.core.mark.Appearance;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.mark.Recognition;

/**
 * What must hold of a mark to be put together: the right parts make a mark that by day and at night
 * is of the kind asked for and no other; any one of them changed does not.
 */
final class AssemblyTruth {
  private AssemblyTruth() {}

  static void holdsOf(Item item) {
    Assembly assembly = (Assembly) item.answer();
    MarkKind kind = item.scenario().mark().kind();
    Practice practice = item.scenario().practice();
    assertThat(assembly.appearance(assembly.key())).contains(item.scenario().mark().appearance());
    assertThat(taken(practice, assembly, assembly.key())).as("%s", item).containsExactly(kind);
    for (Slot slot : assembly.slots()) {
      for (Part part : slot.parts()) {
        Map<Feature, String> changed = new LinkedHashMap<>(assembly.parts());
        changed.put(slot.feature(), part.value());
        String given = assembly.word(changed);
        boolean right = given.equals(assembly.key());
        assertThat(assembly.grade(given).correct()).isEqualTo(right);
        assertThat(taken(practice, assembly, given).equals(List.of(kind)))
            .as("%s in %s", given, item)
            .isEqualTo(right);
      }
    }
    for (Assembly.Belief each : assembly.beliefs()) {
      String led = assembly.led(each.misconception()).orElseThrow();
      assertThat(assembly.grade(led).misconception()).as(led).isEqualTo(each.misconception());
    }
  }

  /** The kinds that a mark put together so may be. */
  private static List<MarkKind> taken(Practice practice, Assembly assembly, String given) {
    Appearance seen = assembly.appearance(given).orElseThrow();
    List<MarkKind> byDay = Recognition.byDay(practice, seen);
    List<MarkKind> atNight = Recognition.byLight(practice, Objects.requireNonNull(seen.light()));
    return byDay.stream().filter(atNight::contains).toList();
  }
}
