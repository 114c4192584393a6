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
  private final BoardDrawing board;

  DayboardDrawing(Appearance appearance) {
    this.appearance = appearance;
    this.board = new BoardDrawing(appearance, FOOT);
  }

  @Override
  public double top() {
    return board.top() - OVER_BOARD;
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
    board.paint(svg, label);
    Sheeting.onBoard(svg, board.outline(), sheeting);
  }

  @Override
  public void silhouette(SvgWriter svg) {
    carrier().silhouette(svg);
    board.silhouette(svg);
  }

  private Carrier carrier() {
    Structure structure = appearance.structure();
    boolean bare = appearance.light() == null && appearance.topmark() == null;
    double top = bare ? (board.top() + FOOT) / 2 : top();
    return new Carrier(structure == null ? Structure.PILE : structure, top);
  }
}
