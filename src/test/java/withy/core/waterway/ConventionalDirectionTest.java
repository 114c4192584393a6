package withy.core.waterway;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import withy.core.geometry.Bearing;
import withy.core.mark.Travel;

class ConventionalDirectionTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0, WITH",
    "0, 60, WITH",
    "0, 300, WITH",
    "350, 50, WITH",
    "0, 60.001,",
    "0, 90,",
    "0, 120,",
    "0, 240,",
    "0, 120.001, AGAINST",
    "0, 180, AGAINST",
    "10, 200, AGAINST"
  })
  void tellsWithFromAgainstAndNeitherAcross(double arrow, double heading, Travel travel) {
    assertThat(new ConventionalDirection(new Bearing(arrow)).travel(new Bearing(heading)))
        .isEqualTo(Optional.ofNullable(travel));
  }

  @Property(tries = 300)
  void turnsRoundWithTheBoat(
      @ForAll @IntRange(max = 359) int arrow, @ForAll @IntRange(max = 359) int heading) {
    ConventionalDirection direction = new ConventionalDirection(new Bearing(arrow));
    Bearing ahead = new Bearing(heading);
    boolean with = direction.travel(ahead).equals(Optional.of(Travel.WITH));
    boolean backAgainst = direction.travel(ahead.reciprocal()).equals(Optional.of(Travel.AGAINST));
    boolean onTheLimit = ahead.angleTo(direction.bearing()) == ConventionalDirection.WITH_LIMIT;
    assertThat(with).isEqualTo(backAgainst || onTheLimit);
  }
}
