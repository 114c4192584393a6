package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;

/** How many stripes a body shows, and how wide each is beside the others. */
final class Stripes {
  private Stripes() {}

  /**
   * Whole stripes: where two colours only name the order, red and white show five stripes with the
   * first colour at both edges, blue and yellow the even number that an emergency wreck mark asks
   * for (IMO SN.1/Circ.259: four to eight, as many of one as of the other).
   */
  static List<Colour> of(BodyShape body, List<Colour> named) {
    if (named.size() != 2) {
      return named;
    }
    int count = named.contains(Colour.BLUE) ? 4 : body == BodyShape.SPAR ? 3 : 5;
    List<Colour> stripes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      stripes.add(named.get(i % 2));
    }
    return stripes;
  }

  /** White is twice as wide as black on the inland waters obstruction mark, 33 CFR 62.32. */
  static List<Integer> weights(List<Colour> stripes) {
    boolean obstruction = List.of(Colour.WHITE, Colour.BLACK).containsAll(stripes);
    return stripes.stream().map(each -> obstruction && each == Colour.WHITE ? 2 : 1).toList();
  }
}
