package withy.core.item;

import withy.core.Term;
import withy.core.mark.Appearance;

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
          part.topmark(),
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

  /** The mark with this feature taken from the part. */
  abstract Appearance onto(Appearance mark, Appearance part);
}
