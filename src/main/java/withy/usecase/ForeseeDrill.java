package withy.usecase;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import withy.core.Term;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Difficulty;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.core.measurement.SequentialTest;
import withy.core.response.DrillKind;
import withy.core.scenario.TimeOfDay;

/** Counts what a class will meet in a drill before it is assigned. */
public final class ForeseeDrill {
  /** Items of a fixed drill that are drawn to count them; more would keep a person waiting. */
  static final int MOST_DRAWN = 60;

  /** What a sample may cost: an item in water takes as long to draw as so many others. */
  private static final int COST = 80;

  private static final int KEPT = 100;
  private static final int WATER = 8;
  private static final int MOST_ROUNDS = 24;

  /** A sample is the same whenever it is drawn, so that the counts stand still. */
  private static final long SAMPLE_SEED = 2;

  /** Samples of late, since a page that is looked at is mostly looked at again. */
  private final Cache<Sampled, Foreseen> sampled = Caffeine.newBuilder().maximumSize(KEPT).build();

  private final ItemSource source;
  private final Rehearsals rehearsals;
  private final Secrets secrets;

  ForeseeDrill(ItemSource source, Secrets secrets, Rehearsals rehearsals) {
    this.source = source;
    this.rehearsals = rehearsals;
    this.secrets = secrets;
  }

  /** Where an item is. */
  public enum Place implements Term {
    /** Nothing but marks in sight. */
    OPEN_WATER,
    /** A stretch of water drawn for the item. */
    DRAWN_WATER,
    /** The water of the composition. */
    CHOSEN_WATER
  }

  /** Items of a kind; a whole number where they were counted one by one. */
  public record Count<T>(T what, double items) {}

  /**
   * What a learner meets, each list in its usual order and without what nobody meets.
   *
   * @param exact whether every item of the drill was counted; else these are expected numbers,
   *     every concept as often, from a sample
   * @param items of the drill, at most
   */
  public record Foreseen(
      boolean exact,
      int items,
      List<Count<Concept>> concepts,
      List<Count<Form>> forms,
      List<Count<TimeOfDay>> times,
      List<Count<Place>> places,
      List<Count<Difficulty>> difficulties) {}

  /** A seed for a fixed drill, from which what was foreseen and what is assigned are drawn. */
  public long seed() {
    return secrets.seed();
  }

  /**
   * What a class will meet.
   *
   * @param seed of a fixed drill; others are drawn anew for each learner
   * @throws Refused NOTHING_TO_DRILL, NO_PASSAGE
   */
  public Foreseen of(Practice ofClass, Composition composition, DrillKind kind, long seed) {
    ComposeDrill.requireItems(ofClass, composition);
    int items = kind == DrillKind.READINESS ? SequentialTest.USUAL.most() : composition.length();
    if (kind == DrillKind.FIXED && items <= MOST_DRAWN) {
      return counted(composition, every(ofClass, composition, seed));
    }
    Practice practice = composition.practiceFor(ofClass);
    if (kind == DrillKind.REHEARSAL) {
      Composition drawnFrom = Rehearsals.drawnFrom(composition);
      return counted(drawnFrom, rehearsals.of(practice, drawnFrom, seed));
    }
    return sampled.get(
        new Sampled(practice, composition, items),
        each -> counted(false, items, composition, sample(practice, composition, items)));
  }

  private record Sampled(Practice practice, Composition composition, int items) {}

  private record Weighed(Item item, double weight) {}

  private List<Item> every(Practice practice, Composition composition, long seed) {
    return IntStream.range(0, composition.length())
        .mapToObj(position -> Issuing.fixed(source, practice, composition, seed, position))
        .toList();
  }

  /** All items of a drill, one by one. */
  private static Foreseen counted(Composition composition, List<Item> items) {
    List<Weighed> each = items.stream().map(item -> new Weighed(item, 1)).toList();
    return counted(true, items.size(), composition, each);
  }

  /** Rounds of items, one on each concept, as many as there is time for. */
  private List<Weighed> sample(Practice practice, Composition composition, int items) {
    List<Concept> concepts = ItemGenerator.measurable(practice, composition);
    List<Item> drawn = new ArrayList<>();
    int cost = 0;
    int rounds = 0;
    while (rounds < MOST_ROUNDS && cost < COST) {
      for (Concept each : concepts) {
        Item item = source.item(practice, composition.about(each), SAMPLE_SEED, rounds);
        cost += item.scenario().sailing() == null ? 1 : WATER;
        drawn.add(item);
      }
      rounds++;
    }
    double weight = (double) items / drawn.size();
    return drawn.stream().map(item -> new Weighed(item, weight)).toList();
  }

  private static Foreseen counted(
      boolean exact, int items, Composition composition, List<Weighed> drawn) {
    return new Foreseen(
        exact,
        items,
        counts(drawn, Item::measures),
        counts(drawn, Item::form),
        counts(drawn, item -> item.scenario().situation().time()),
        counts(drawn, item -> place(item, composition)),
        counts(drawn, Difficulty::of));
  }

  private static Place place(Item item, Composition composition) {
    if (item.scenario().sailing() == null) {
      return Place.OPEN_WATER;
    }
    return composition.water() == null ? Place.DRAWN_WATER : Place.CHOSEN_WATER;
  }

  private static <T extends Enum<T>> List<Count<T>> counts(
      List<Weighed> drawn, Function<Item, T> property) {
    Map<T, Double> sums = new TreeMap<>(Comparator.naturalOrder());
    drawn.forEach(each -> sums.merge(property.apply(each.item()), each.weight(), Double::sum));
    return sums.entrySet().stream()
        .map(each -> new Count<>(each.getKey(), each.getValue()))
        .toList();
  }
}
