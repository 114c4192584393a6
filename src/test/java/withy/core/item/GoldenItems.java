package withy.core.item;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import withy.core.mark.Practice;
import withy.exchange.ItemJson;
import withy.wording.ItemWording;
import withy.wording.Wording;

/** Writes the items that the golden file holds; a second machine must write the same bytes. */
public final class GoldenItems {
  private static final int SEEDS = 20;
  private static final Composition ALL = new Composition(List.of(), List.of(), null, 10);

  private GoldenItems() {}

  public static void main(String[] args) {
    byte[] bytes = lines().getBytes(StandardCharsets.UTF_8);
    PrintStream out = System.out;
    out.write(bytes, 0, bytes.length);
    out.flush();
  }

  static String lines() {
    ItemWording words = new ItemWording(Wording.of(Locale.ENGLISH));
    StringBuilder lines = new StringBuilder();
    for (Practice practice : Practice.values()) {
      for (int seed = 1; seed <= SEEDS; seed++) {
        Item item = ItemGenerator.item(practice, ALL, seed, seed % 5);
        lines.append(ItemJson.line(item, words)).append('\n');
      }
    }
    return lines.toString();
  }
}
