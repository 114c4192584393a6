package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLongArray;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import withy.core.mark.Practice;
import withy.core.scenario.Situation;
import withy.exchange.ItemJson;
import withy.wording.ItemWording;
import withy.wording.Wording;

/**
 * Every form by itself under every practice, for as many seeds as {@code withy.seeds} says; with
 * how many different items up to ten thousand seeds give, written to {@code target/forms.md}.
 */
class EveryFormIT {
  private static final int SEEDS = Integer.getInteger("withy.seeds", 3_000);
  private static final int MOST_COUNTED = 10_000;

  /** Forms whose every item is sailed, which takes its time; a tenth of the seeds are theirs. */
  static final Set<Form> IN_WATER = EnumSet.of(Form.PASSAGE, Form.CLEARANCE, Form.CHART_OVER_RULE);

  private static final int MOST_OPTIONS = 8;
  private static final Map<String, String> ROWS = new TreeMap<>();

  @ParameterizedTest
  @EnumSource(Form.class)
  void holdsUnderEveryPractice(Form form) {
    Composition composition = new Composition(List.of(), List.of(form), null, 10);
    StringBuilder row = new StringBuilder("| `" + form.id() + "` |");
    for (Practice practice : Practice.values()) {
      if (Menu.of(practice).allowed(composition).isEmpty()) {
        assertThat(form).as("only cardinal marks are lacking").isEqualTo(Form.CARDINAL_PASS);
        row.append(" – |");
      } else {
        holds(practice, composition);
        row.append(' ').append(distinct(practice, composition)).append(" |");
      }
    }
    ROWS.put(form.id(), row.toString());
  }

  private static void holds(Practice practice, Composition composition) {
    List<AtomicLongArray> places =
        IntStream.rangeClosed(0, MOST_OPTIONS).mapToObj(AtomicLongArray::new).toList();
    IntStream.range(0, seeds(composition))
        .parallel()
        .forEach(
            seed -> {
              Item item = ItemGenerator.item(practice, composition, seed, seed % 7);
              Truth.holdsOf(item);
              int size = item.options().size();
              if (size > 0) {
                places.get(size).incrementAndGet(Truth.placeOfKey(item));
              }
            });
    places.stream().filter(each -> total(each) > 0).forEach(EveryFormIT::spreadEvenly);
  }

  private static int seeds(Composition composition) {
    return IN_WATER.containsAll(composition.forms()) ? SEEDS / 10 : SEEDS;
  }

  private static long total(AtomicLongArray counts) {
    return IntStream.range(0, counts.length()).mapToLong(counts::get).sum();
  }

  /** Pearson's chi-squared test of a uniform place of the key, once for each of many tables. */
  private static void spreadEvenly(AtomicLongArray counts) {
    double expected = (double) total(counts) / counts.length();
    double sum =
        IntStream.range(0, counts.length())
            .mapToDouble(i -> (counts.get(i) - expected) * (counts.get(i) - expected) / expected)
            .sum();
    double p = ChiSquaredDistribution.of(counts.length() - 1.0).survivalProbability(sum);
    assertThat(p).as("places of the key %s", counts).isGreaterThan(1e-5);
  }

  /** How many differ at all, and in more than angles, distances and the order of options. */
  private static String distinct(Practice practice, Composition composition) {
    ItemWording words = new ItemWording(Wording.of(Locale.ENGLISH));
    Set<String> lines = ConcurrentHashMap.newKeySet();
    Set<List<Object>> substances = ConcurrentHashMap.newKeySet();
    IntStream.range(0, Math.min(seeds(composition), MOST_COUNTED))
        .parallel()
        .mapToObj(seed -> ItemGenerator.item(practice, composition, seed, 0))
        .forEach(
            item -> {
              lines.add(digest(ItemJson.line(item, words).replaceFirst("\"seed\":\\d+,", "")));
              substances.add(substance(item));
            });
    return lines.size() + ", " + substances.size();
  }

  /** In place of the line itself, since one that carries a water is long. */
  private static String digest(String line) {
    try {
      byte[] sum =
          MessageDigest.getInstance("SHA-256").digest(line.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(sum);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Object> substance(Item item) {
    Situation situation = item.scenario().situation();
    List<Object> substance = new ArrayList<>();
    item.scenario().marks().forEach(each -> substance.add(List.of(each.kind(), each.appearance())));
    substance.add(
        Arrays.asList(
            situation.travel(),
            situation.time(),
            situation.view(),
            situation.intent(),
            situation.setting(),
            situation.waters(),
            item.scenario().question(),
            item.scenario().lookout()));
    substance.add(item.answer().foreseen().stream().sorted().toList());
    return substance;
  }

  @AfterAll
  static void write() throws IOException {
    String head =
        "| different items, and in more than angles and order, of "
            + Math.min(SEEDS, MOST_COUNTED)
            + " seeds | "
            + Practice.values().stream().map(Practice::id).collect(Collectors.joining(" | "))
            + " |\n|---|"
            + "---|".repeat(Practice.values().size())
            + "\n";
    Files.writeString(
        Path.of("target", "forms.md"), head + String.join("\n", ROWS.values()) + "\n");
  }
}
