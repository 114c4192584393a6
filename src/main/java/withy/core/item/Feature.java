package withy.core.item;

import java.util.List;
import java.util.function.BinaryOperator;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.mark.Appearance;
import withy.core.mark.Colour;
import withy.core.mark.Topmark;

/** By what a mark is known, and what a learner chooses when putting one together. */
public enum Feature implements Term {
  BODY(Appearance::bodied),
  /** Pattern, colours and symbol. */
  COLOURS(Appearance::painted),
  /** A topmark shown in grey is of no colour yet, and takes that which goes with the body. */
  TOPMARK((mark, part) -> mark.topped(coloured(part.topmark(), mark))),
  LIGHT((mark, part) -> mark.lit(part.light()));

  private final BinaryOperator<Appearance> taking;

  Feature(BinaryOperator<Appearance> taking) {
    this.taking = taking;
  }

  /** The mark with this feature taken from the part. */
  Appearance onto(Appearance mark, Appearance part) {
    return taking.apply(mark, part);
  }

  /**
   * Black over any body with black in it, else the first colour of the body: so it is on all marks
   * of the maritime buoyage system but the emergency wreck mark.
   */
  private static @Nullable Topmark coloured(@Nullable Topmark topmark, Appearance mark) {
    if (topmark == null || !topmark.colours().equals(List.of(Colour.GREY))) {
      return topmark;
    }
    boolean black = mark.colours().contains(Colour.BLACK);
    return Topmark.of(topmark.shape(), black ? Colour.BLACK : mark.colours().get(0));
  }
}
