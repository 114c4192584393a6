package withy.core.item;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkGroup;
import withy.core.mark.Practice;
import withy.core.mark.Waters;
import withy.core.scenario.SightedMark;

/** Which marks of a practice items are about, and in which forms. */
public final class Drilled {
  /** Forms that can do without water, where drawing is quick, and show every mark. */
  private static final List<Form> DRY =
      List.of(Form.values()).stream().filter(each -> !EveryFormIT.IN_WATER.contains(each)).toList();

  private Drilled() {}

  /** The forms in which each mark is met over so many seeds, by the id of the mark. */
  public static Map<String, Set<Form>> forms(Practice practice, int seeds) {
    Composition dry = new Composition(List.of(), DRY, null, 10);
    Map<String, Set<Form>> forms = new LinkedHashMap<>();
    practice.marks().forEach(each -> forms.put(each.id(), new TreeSet<>()));
    for (int seed = 0; seed < seeds; seed++) {
      Item item = ItemGenerator.item(practice, dry, seed, seed % 5);
      if (!item.scenario().marks().isEmpty()) {
        for (SightedMark each : item.scenario().marks()) {
          forms.get(id(item, each)).add(item.form());
        }
      }
    }
    return forms;
  }

  /** Of marks in waters of their own and private ones, by more than their looks. */
  private static String id(Item item, SightedMark seen) {
    Practice practice = item.scenario().practice();
    Waters waters = item.scenario().situation().waters();
    for (MarkDescription each : practice.marks()) {
      boolean river = waters == Waters.WESTERN_RIVERS && each.waters() == waters;
      boolean symbol =
          waters == Waters.INTRACOASTAL
              && each.waters() == waters
              && each.look().symbol() == seen.appearance().symbol();
      boolean priv = each.group() == MarkGroup.PRIVATE && SightedMark.PRIVATE.equals(seen.label());
      if ((river && each.kind().equals(seen.kind())) || symbol || priv) {
        return each.id();
      }
    }
    return practice.mark(seen.kind(), seen.appearance()).orElseThrow().id();
  }
}
