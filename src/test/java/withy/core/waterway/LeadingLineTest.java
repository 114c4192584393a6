package withy.core.waterway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import withy.core.geometry.Position;

class LeadingLineTest {
  private static final Position FROM = new Position(0, 0);
  private static final Position UNTIL = new Position(500, 500);
  private static final Position FRONT = new Position(900, 900);

  @Test
  void bearsFromTheFrontMarkToTheRearOneAsSeenFromSeaward() {
    LeadingLine line = new LeadingLine(FRONT, new Position(1100, 1100), FROM, UNTIL);
    assertThat(line.bearing().degrees()).isEqualTo(45);
    assertThat(line.followed().end()).isEqualTo(UNTIL);
  }

  @Test
  void isNoneWhereTheMarksStandOffTheReach() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LeadingLine(FRONT, new Position(1100, 1090), FROM, UNTIL));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new LeadingLine(new Position(920, 900), new Position(1120, 1100), FROM, UNTIL));
  }

  @Test
  void isNoneWhereTheFrontMarkIsTheFartherOne() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LeadingLine(new Position(1100, 1100), FRONT, FROM, UNTIL));
  }
}
