package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.Colour;
import withy.core.mark.Structure;
import withy.core.mark.Symbol;
import withy.core.mark.Waters;
import withy.core.scenario.View;

/**
 * What national marks ask, and the sides that symbols, brooms and flashes tell, by what is seen of
 * them rather than by the rule books that the generator asks.
 */
final class AskedTruth {
  private static final Map<Symbol, String> BY_SYMBOL =
      Map.of(
          Symbol.DIAMOND, "beware-of-danger",
          Symbol.DIAMOND_CROSS, "stay-out",
          Symbol.CIRCLE, "obey-restriction",
          Symbol.SQUARE, "read-notice",
          Symbol.ANCHOR, "anchor-within",
          Symbol.DIVER_FLAG, "mind-divers");

  /** Colours from the top, or from the left. */
  private static final Map<String, String> BY_COLOURS =
      Map.of(
          "[BLACK, RED, BLACK]", "stand-off",
          "[RED, WHITE]", "go-either-side",
          "[BLUE, YELLOW]", "keep-clear-of-wreck",
          "[ORANGE, WHITE]", "may-moor",
          "[WHITE, BLUE, WHITE]", "may-moor",
          "[WHITE]", "leave-to-swimmers",
          "[WHITE, BLACK]", "stay-offshore");

  private AskedTruth() {}

  /** The word of what a mark asks; of plain yellow ones the chart's word decides. */
  static String of(String kind, Appearance seen) {
    if (seen.board() != null) {
      return board(seen);
    }
    if (seen.symbol() != null) {
      return Objects.requireNonNull(BY_SYMBOL.get(seen.symbol()));
    }
    if (seen.colours().get(0) == Colour.YELLOW && seen.colours().size() == 1) {
      return kind.equals("special")
          ? "read-chart"
          : kind.equals("scientific") ? "leave-alone" : "take-care";
    }
    if (List.of(Colour.RED, Colour.GREEN).containsAll(seen.colours())) {
      assertThat(seen.colours()).as("a lateral mark").hasSize(1);
      return "keep-to-its-side";
    }
    return Objects.requireNonNull(BY_COLOURS.get(seen.colours().toString()), seen.toString());
  }

  private static String board(Appearance seen) {
    Colour border = Objects.requireNonNull(seen.board()).border();
    return switch (border) {
      case ORANGE ->
          seen.board().shape().id().equals("diamond") ? "beware-of-danger" : "read-notice";
      case WHITE -> "find-position";
      case RED, GREEN -> "cross-over";
      default -> throw new AssertionError(seen);
    };
  }

  /** Whether with the buoyage the mark is left to port; null where its colour tells. */
  static @Nullable Boolean toPort(Appearance seen, @Nullable Waters waters, View view) {
    if (waters == Waters.WESTERN_RIVERS && view == View.LIGHT) {
      return Objects.requireNonNull(seen.light()).shortNotation().startsWith("Fl(2)")
          ? Boolean.FALSE
          : Boolean.TRUE;
    }
    if (seen.symbol() == Symbol.YELLOW_SQUARE || seen.symbol() == Symbol.YELLOW_TRIANGLE) {
      assertThat(waters).isEqualTo(Waters.INTRACOASTAL);
      return seen.symbol() == Symbol.YELLOW_SQUARE;
    }
    if (seen.structure() == Structure.BROOM_UP || seen.structure() == Structure.BROOM_DOWN) {
      return seen.structure() == Structure.BROOM_UP;
    }
    return null;
  }
}
