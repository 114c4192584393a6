package withy.core.mark;

import java.util.List;

/** When the colours seen on a body are those of a look. */
final class Colours {
  private Colours() {}

  /**
   * Stripes may begin with either colour, and be listed all or as the two that alternate; an
   * isolated-danger mark may have more than one red band.
   */
  static boolean match(MarkLook look, List<Colour> seen) {
    return look.colours().equals(seen)
        || (look.pattern() == ColourPattern.VERTICAL && alternate(look.colours(), seen))
        || (look.kind().equals(MarkKind.ISOLATED_DANGER)
            && seen.size() % 2 == 1
            && seen.get(0) == Colour.BLACK
            && alternate(look.colours().subList(0, 2), seen));
  }

  private static boolean alternate(List<Colour> pair, List<Colour> seen) {
    int first = pair.indexOf(seen.get(0));
    for (int i = 0; i < seen.size(); i++) {
      if (first < 0 || seen.get(i) != pair.get((first + i) % 2)) {
        return false;
      }
    }
    return seen.size() >= 2;
  }
}
