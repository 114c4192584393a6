package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.scenario.SightedMark;

/**
 * A hundred thousand seeds under each practice of the forms that can do without a stretch of water,
 * and two thousand of all: to draw and sail a water takes a thousand times as long as an item.
 */
class ItemGeneratorIT {
  private static final int SEEDS = 100_000;
  private static final int SEEDS_IN_WATER = 2_000;
  private static final Composition ALL = new Composition(List.of(), List.of(), null, 10);

  /** What is kept of an item. */
  private record Met(Form form, Travel travel, List<MarkKind> kinds, int options, int key) {
    static Met of(Item item) {
      int options = item.options().size();
      return new Met(
          item.form(),
          item.scenario().situation().travel(),
          item.scenario().marks().stream().map(SightedMark::kind).distinct().toList(),
          options,
          options == 0 ? 0 : Truth.placeOfKey(item));
    }
  }

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void everyItemIsTrueAndEverythingIsMet(Practice practice) {
    List<Form> dry = new ArrayList<>(formsOf(practice));
    dry.removeAll(EveryFormIT.IN_WATER);
    List<Met> met = drawn(practice, ALL.by(dry), SEEDS);
    assertThat(met.stream().flatMap(each -> each.kinds().stream()).distinct())
        .containsAll(MarkingRules.kinds(practice));
    assertThat(EnumSet.copyOf(met.stream().map(Met::travel).toList()))
        .containsExactly(Travel.values());
    assertThat(EnumSet.copyOf(met.stream().map(Met::form).toList())).containsExactlyElementsOf(dry);
    Map<Integer, long[]> places = new TreeMap<>();
    for (Met each : met) {
      int size = each.options();
      if (size > 0) {
        places.computeIfAbsent(size, none -> new long[size])[each.key()]++;
      }
    }
    assertThat(places.values()).allSatisfy(ItemGeneratorIT::spreadEvenly);
  }

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void everyFormIsMetAndTrueInWaterToo(Practice practice) {
    List<Met> met = drawn(practice, ALL, SEEDS_IN_WATER);
    assertThat(EnumSet.copyOf(met.stream().map(Met::form).toList()))
        .containsExactlyElementsOf(formsOf(practice));
  }

  private static List<Met> drawn(Practice practice, Composition composition, int seeds) {
    return IntStream.range(0, seeds)
        .parallel()
        .mapToObj(
            seed -> {
              Item item = ItemGenerator.item(practice, composition, seed, seed % 5);
              Truth.holdsOf(item);
              return Met.of(item);
            })
        .toList();
  }

  private static List<Form> formsOf(Practice practice) {
    return List.of(Form.values()).stream()
        .filter(form -> form != Form.CARDINAL_PASS || practice != Practice.USA)
        .toList();
  }

  /** Pearson's chi-squared test of a uniform place of the key. */
  private static void spreadEvenly(long[] counts) {
    double expected = 0;
    for (long each : counts) {
      expected += (double) each / counts.length;
    }
    double sum = 0;
    for (long each : counts) {
      sum += (each - expected) * (each - expected) / expected;
    }
    double p = ChiSquaredDistribution.of(counts.length - 1.0).survivalProbability(sum);
    assertThat(p).isGreaterThan(0.001);
  }
}
