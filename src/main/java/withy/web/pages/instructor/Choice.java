package withy.web.pages.instructor;

import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.drawing.Svg;

/** Something to tick or to choose. */
public record Choice(String value, String text, boolean chosen, @Nullable Svg picture) {
  static Choice of(Term term, String text, boolean chosen) {
    return new Choice(term.id(), text, chosen, null);
  }
}
