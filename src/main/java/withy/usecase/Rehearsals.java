package withy.usecase;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.geometry.Position;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.scenario.Sailing;
import withy.core.waterway.Call;
import withy.core.waterway.Voyage;

/**
 * Rehearses the passage through a water: its marks one by one in the order in which the boat has
 * them abeam, in from the sea and out again, then the whole passage.
 *
 * <p>The items are picked from those that the generator draws from one seed, so each is drawn again
 * from what is kept of it like any other, and a rehearsal needs nothing of its own to be kept.
 */
final class Rehearsals {
  private static final Set<Form> ONE_BY_ONE =
      Set.of(Form.SIDE, Form.CARDINAL_PASS, Form.CHANNEL_CHOICE);

  /** Draws on each concept: enough that a mark among twenty, both ways, is missed hardly ever. */
  private static final int DRAWS = 160;

  private static final int WAYS = 2;

  /** Rehearsals of late, as each takes about as long to pick as a hundred items. */
  private static final int KEPT = 32;

  private final Cache<Key, List<Item>> picked = Caffeine.newBuilder().maximumSize(KEPT).build();
  private final ItemSource source;

  Rehearsals(ItemSource source) {
    this.source = source;
  }

  private record Key(Practice practice, Composition composition, long seed) {}

  private record Stop(Travel travel, Position mark) {}

  /** What a rehearsal draws from: in the water, by the forms that sail past marks. */
  static Composition drawnFrom(Composition composition) {
    List<Form> forms = new ArrayList<>();
    for (Form each : Form.values()) {
      boolean fits = ONE_BY_ONE.contains(each) || each == Form.PASSAGE;
      if (fits && (composition.forms().isEmpty() || composition.forms().contains(each))) {
        forms.add(each);
      }
    }
    return composition.by(forms);
  }

  /**
   * The items of a rehearsal in their order.
   *
   * @param composition as {@link #drawnFrom} gives it
   * @throws Refused NO_PASSAGE where no water is chosen, or none of its marks can be asked about
   */
  List<Item> of(Practice practice, Composition composition, long seed) {
    @Nullable SurveyedWater water = composition.water();
    if (water == null || composition.forms().isEmpty()) {
      throw new Refused(Reason.NO_PASSAGE);
    }
    List<Item> items = picked.get(new Key(practice, composition, seed), key -> pick(key, water));
    if (items.isEmpty()) {
      throw new Refused(Reason.NO_PASSAGE);
    }
    return items;
  }

  /** The first item that is drawn of each stop, and of the whole passage each way. */
  private List<Item> pick(Key key, SurveyedWater water) {
    Map<Stop, Optional<Item>> stops = stops(key, water);
    Map<Travel, Item> whole = new LinkedHashMap<>();
    for (Concept each : ItemGenerator.measurable(key.practice(), key.composition())) {
      for (int i = 0; i < DRAWS && !(each == Concept.PASSAGE && whole.size() == WAYS); i++) {
        place(
            source.item(key.practice(), key.composition().about(each), key.seed(), i),
            stops,
            whole);
      }
    }
    List<Item> items = new ArrayList<>();
    stops.values().forEach(each -> each.ifPresent(items::add));
    items.addAll(whole.values());
    return items;
  }

  private static void place(Item item, Map<Stop, Optional<Item>> stops, Map<Travel, Item> whole) {
    Travel travel = item.scenario().situation().travel();
    @Nullable Sailing sailing = item.scenario().sailing();
    if (item.form() == Form.PASSAGE) {
      whole.putIfAbsent(travel, item);
    } else if (sailing != null) {
      Stop stop = new Stop(travel, sailing.marks().get(0).position());
      stops.computeIfPresent(stop, (at, had) -> had.or(() -> Optional.of(item)));
    }
  }

  /** The marks of the main fairway in, then out, each without an item yet. */
  private static Map<Stop, Optional<Item>> stops(Key key, SurveyedWater water) {
    Map<Stop, Optional<Item>> stops = new LinkedHashMap<>();
    for (boolean inbound : new boolean[] {true, false}) {
      Voyage voyage =
          Voyage.of(
              water.marked(key.practice(), Chance.of(key.seed(), 0)), key.practice(), "", inbound);
      for (Call each : voyage.calls()) {
        stops.put(new Stop(voyage.travel(), each.mark().position()), Optional.empty());
      }
    }
    return stops;
  }
}
