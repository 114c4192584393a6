package withy.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.Retroreflector;
import withy.core.mark.Structure;

/** A board on what carries it: a pile unless another structure is given. */
final class DayboardDrawing implements Figure {
  private static final double FOOT = -48;
  private static final double OVER_BOARD = 5;

  private final Appearance appearance;

  DayboardDrawing(Appearance appearance) {
    this.appearance = appearance;
  }

  @Override
  public double top() {
    return board(SvgWriter.scaled(1, 1)).top() - OVER_BOARD;
  }

  @Override
  public double halfWidth() {
    return carrier().halfWidth();
  }

  @Override
  public Footing footing() {
    return carrier().footing();
  }

  @Override
  public void paint(SvgWriter svg, @Nullable String label, List<Retroreflector> sheeting) {
    carrier().paint(svg);
    board(svg).paint(label);
    Sheeting.onBoard(svg, board(svg).outline(), sheeting);
  }

  @Override
  public void silhouette(SvgWriter svg) {
    carrier().silhouette(svg);
    board(svg).silhouette();
  }

  private BoardDrawing board(SvgWriter svg) {
    return new BoardDrawing(svg, appearance, FOOT);
  }

  private Carrier carrier() {
    Structure structure = appearance.structure();
    double top = appearance.light() == null && appearance.topmark() == null ? top() + 20 : top();
    return new Carrier(structure == null ? Structure.PILE : structure, top);
  }
}
