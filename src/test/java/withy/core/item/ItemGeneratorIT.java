package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.scenario.SightedMark;

/** A hundred thousand seeds under each practice. */
class ItemGeneratorIT {
  private static final int SEEDS = 100_000;
  private static final Composition ALL = new Composition(List.of(), List.of(), null, 10);

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void everyItemIsTrueAndEverythingIsMet(Practice practice) {
    Set<MarkKind> kinds = new LinkedHashSet<>();
    Set<Travel> travels = EnumSet.noneOf(Travel.class);
    Set<Form> forms = EnumSet.noneOf(Form.class);
    Map<Integer, long[]> places = new TreeMap<>();
    for (int seed = 0; seed < SEEDS; seed++) {
      Item item = ItemGenerator.item(practice, ALL, seed, seed % 5);
      Truth.holdsOf(item);
      item.scenario().marks().stream().map(SightedMark::kind).forEach(kinds::add);
      travels.add(item.scenario().situation().travel());
      forms.add(item.form());
      int size = item.options().size();
      if (size > 0) {
        places.computeIfAbsent(size, none -> new long[size])[Truth.placeOfKey(item)]++;
      }
    }
    assertThat(kinds).containsAll(MarkingRules.kinds(practice));
    assertThat(travels).containsExactly(Travel.values());
    assertThat(forms).containsExactlyElementsOf(formsOf(practice));
    assertThat(places.values()).allSatisfy(ItemGeneratorIT::spreadEvenly);
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
