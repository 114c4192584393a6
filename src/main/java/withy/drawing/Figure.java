package withy.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.Retroreflector;
import withy.core.mark.Structure;

/**
 * A mark without lantern and topmark, in units of which a pillar's tower has 118; the waterline is
 * at nought and heights above it are negative, as on a screen.
 */
interface Figure {
  static Figure of(Appearance appearance) {
    Structure structure = appearance.structure();
    if (appearance.body() == BodyShape.DAYBOARD) {
      return new DayboardDrawing(appearance);
    }
    if (structure == Structure.LATTICE) {
      return new LatticeDrawing(appearance);
    }
    return structure != null && structure.ordinal() >= Structure.WITHY.ordinal()
        ? new StakeDrawing(appearance)
        : new BodyDrawing(appearance);
  }

  /** Where the foot of a lantern or of a topmark's staff stands. */
  double top();

  /** The highest place of all that is drawn. */
  default double highest() {
    return top();
  }

  /** Half the width where it stands. */
  double halfWidth();

  /** Degrees that it leans to the right. */
  default double heel() {
    return 0;
  }

  Footing footing();

  /**
   * In its colours.
   *
   * @param sheeting that shines back, from the top down
   */
  void paint(SvgWriter svg, @Nullable String label, List<Retroreflector> sheeting);

  /** As one dark shape. */
  void silhouette(SvgWriter svg);
}
