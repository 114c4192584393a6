package withy.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PolylineTest {
  /** North for 300 m, then east for 400 m. */
  private static final Polyline CORNER =
      Polyline.of(new Position(0, 0), new Position(0, 300), new Position(400, 300));

  @Test
  void tellsPlacesAndDirectionsAlongIt() {
    assertThat(CORNER.length()).isEqualTo(700);
    assertThat(CORNER.at(100)).isEqualTo(new Position(0, 100));
    assertThat(CORNER.at(500)).isEqualTo(new Position(200, 300));
    assertThat(CORNER.at(-5)).isEqualTo(CORNER.start());
    assertThat(CORNER.at(1000)).isEqualTo(CORNER.end());
    assertThat(CORNER.bearingAt(100).degrees()).isZero();
    assertThat(CORNER.bearingAt(500).degrees()).isEqualTo(90);
  }

  @Test
  void countsOffToStarboardOfItsDirection() {
    Polyline.Foot foot = CORNER.foot(new Position(30, 120));
    assertThat(foot.along()).isEqualTo(120);
    assertThat(foot.off()).isEqualTo(30);
    assertThat(CORNER.foot(new Position(-40, 50)).off()).isEqualTo(-40);
    assertThat(CORNER.reversed().foot(new Position(30, 120)).off()).isEqualTo(-30);
  }

  @Property
  void findsAPlaceBesideItAgain(
      @ForAll @DoubleRange(min = 20, max = 250) double along,
      @ForAll @DoubleRange(min = -19, max = 19) double off) {
    Polyline.Foot foot = CORNER.foot(CORNER.beside(along, off));
    assertThat(foot.along()).isEqualTo(along, within(1e-6));
    assertThat(foot.off()).isEqualTo(off, within(1e-6));
  }

  @Test
  void roundsCornersBetweenItsEnds() {
    Polyline round = CORNER.rounded();
    assertThat(round.start()).isEqualTo(CORNER.start());
    assertThat(round.end()).isEqualTo(CORNER.end());
    assertThat(round.length()).isLessThan(CORNER.length());
    assertThat(round.points()).doesNotContain(new Position(0, 300));
  }

  @Test
  void refusesWhatIsNoLine() {
    Position place = new Position(1, 2);
    assertThatIllegalArgumentException().isThrownBy(() -> Polyline.of(place));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Polyline.of(place, place))
        .withMessageContaining("repeats");
  }

  @Test
  void endsWhereItFirstPassesAPlace() {
    Polyline line = Polyline.of(new Position(0, 0), new Position(100, 0), new Position(100, 50));
    assertThat(line.until(new Position(40, 0)).points())
        .containsExactly(new Position(0, 0), new Position(40, 0));
    assertThat(line.until(new Position(100, 20)).length()).isEqualTo(120);
    assertThat(line.until(new Position(100, 0)).length()).isEqualTo(100);
    assertThat(line.until(new Position(7, 7))).isEqualTo(line);
  }
}
