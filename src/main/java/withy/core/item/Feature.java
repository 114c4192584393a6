package withy.core.item;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.mark.Appearance;
import withy.core.mark.Colour;
import withy.core.mark.Topmark;

/** By what a mark is known, and what a learner chooses when putting one together. */
public enum Feature implements Term {
  BODY {
    @Override
    Appearance onto(Appearance mark, Appearance part) {
      return new Appearance(
          part.body(),
          mark.pattern(),
          mark.colours(),
          mark.symbol(),
          part.board(),
          part.structure(),
          mark.topmark(),
          mark.light());
    }
  },
  /** Pattern, colours and symbol. */
  COLOURS {
    @Override
    Appearance onto(Appearance mark, Appearance part) {
      return new Appearance(
          mark.body(),
          part.pattern(),
          part.colours(),
          part.symbol(),
          mark.board(),
          mark.structure(),
          mark.topmark(),
          mark.light());
    }
  },
  /** A topmark shown in grey is of no colour yet, and takes that which goes with the body. */
  TOPMARK {
    @Override
    Appearance onto(Appearance mark, Appearance part) {
      return new Appearance(
          mark.body(),
          mark.pattern(),
          mark.colours(),
          mark.symbol(),
          mark.board(),
          mark.structure(),
          coloured(part.topmark(), mark),
          mark.light());
    }
  },
  LIGHT {
    @Override
    Appearance onto(Appearance mark, Appearance part) {
      return new Appearance(
          mark.body(),
          mark.pattern(),
          mark.colours(),
          mark.symbol(),
          mark.board(),
          mark.structure(),
          mark.topmark(),
          part.light());
    }
  };

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

  /** The mark with this feature taken from the part. */
  abstract Appearance onto(Appearance mark, Appearance part);
}
