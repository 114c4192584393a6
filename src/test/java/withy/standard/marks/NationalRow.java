package withy.standard.marks;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import withy.core.mark.Colour;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkLook;
import withy.core.mark.Practice;
import withy.core.mark.Symbol;

/** A row of the table of national marks with one of the marks that it lists. */
record NationalRow(Practice practice, MarkDescription mark, CSVRecord cells) {
  /** What is written on a mark is no colour of it, and either centre of a daybeacon will do. */
  private static final Pattern WRITTEN =
      Pattern.compile(
          "; black (text/symbol|figure) inside|, black letters|\\(black or green centre\\)|"
              + " on red/green/black.*|\\(KRW = .*");

  String cell(String column) {
    return cells.get(column);
  }

  MarkLook look() {
    return mark.look();
  }

  /** The colours that the row names, whatever part has them. */
  Set<String> coloursNamed() {
    String cells = cell("colours_top_to_bottom") + " " + cell("pattern_or_symbol");
    Matcher words =
        Pattern.compile("\\b(red|green|yellow|black|white|blue|orange)\\b")
            .matcher(WRITTEN.matcher(cells).replaceAll(""));
    Set<String> named = new TreeSet<>();
    words.results().forEach(each -> named.add(each.group()));
    return named;
  }

  /** The colours of body, board, border, symbol and topmark. */
  Set<String> coloursShown() {
    Set<String> shown = new TreeSet<>();
    look().colours().forEach(each -> shown.add(each.id()));
    if (look().board() != null) {
      shown.add(look().board().border().id());
      add(shown, look().board().ground());
    }
    if (look().symbol() != null) {
      shown.addAll(colours(look().symbol()));
    }
    return shown;
  }

  private static void add(Set<String> shown, @Nullable Colour colour) {
    if (colour != null) {
      shown.add(colour.id());
    }
  }

  private static List<String> colours(Symbol symbol) {
    if (symbol.isOrange()) {
      return List.of("orange");
    }
    return switch (symbol) {
      case ANCHOR -> List.of("black");
      case DIVER_FLAG -> List.of("red", "white");
      default -> List.of("yellow");
    };
  }

  /** The symbol that the row names; null where it names none. */
  @Nullable Symbol symbolNamed() {
    String cells =
        (cell("colours_top_to_bottom") + " " + cell("pattern_or_symbol")).toLowerCase(Locale.ROOT);
    if (cells.matches(".*orange .*diamond.*cross.*")) {
      return Symbol.DIAMOND_CROSS;
    }
    if (cells.matches(".*orange .*diamond.*")) {
      return Symbol.DIAMOND;
    }
    if (cells.matches(".*orange .*circle.*")) {
      return Symbol.CIRCLE;
    }
    if (cells.matches(".*orange .*square.*")) {
      return Symbol.SQUARE;
    }
    if (cells.contains("anchor symbol")) {
      return Symbol.ANCHOR;
    }
    return cells.contains("red flag") ? Symbol.DIVER_FLAG : null;
  }

  @Override
  public String toString() {
    return practice.id() + " " + mark.id() + " by " + cell("item");
  }
}
