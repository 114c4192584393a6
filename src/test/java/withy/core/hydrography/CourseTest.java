package withy.core.hydrography;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;

class CourseTest {
  private static final Polyline LINE =
      Polyline.of(
              new Position(-300, 0),
              new Position(200, 400),
              new Position(600, 100),
              new Position(900, 800),
              new Position(1500, 700))
          .rounded();

  private final Course course = new Course(LINE);

  @Property
  void findsWhatTheLineFindsWhereverItLookedBefore(
      @ForAll @IntRange(min = -500, max = 1700) int x,
      @ForAll @IntRange(min = -500, max = 1200) int y) {
    Position place = new Position(x + 0.37, y + 0.11);
    assertThat(course.foot(place).distance()).isCloseTo(LINE.foot(place).distance(), within(1e-9));
    assertThat(LINE.at(course.foot(place).along()).distanceTo(place))
        .isCloseTo(course.foot(place).distance(), within(1e-6));
  }
}
