package withy.core.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import withy.core.geometry.Bearing;

class SectoredLightTest {
  private static final int TRIES = 300;

  @Example
  void redIsSeenOnTheBearingsOfItsSectorFromSeaward() {
    SectoredLight light = new SectoredLight(List.of(LightSector.of(120, 163, LightColour.RED)));
    assertThat(light.seenOn(new Bearing(140))).contains(LightColour.RED);
    assertThat(light.seenOn(new Bearing(320))).isEmpty();
  }

  @Example
  void aSectorMayRunThroughNorth() {
    SectoredLight light =
        new SectoredLight(
            List.of(
                LightSector.of(340, 352, LightColour.GREEN),
                LightSector.of(352, 4, LightColour.WHITE),
                LightSector.of(4, 20, LightColour.RED)));
    assertThat(light.seenOn(new Bearing(0))).contains(LightColour.WHITE);
    assertThat(light.seenOn(new Bearing(359.9))).contains(LightColour.WHITE);
    assertThat(light.seenOn(new Bearing(351.9))).contains(LightColour.GREEN);
    assertThat(light.seenOn(new Bearing(4))).contains(LightColour.RED);
    assertThat(light.seenOn(new Bearing(20))).isEmpty();
  }

  @Property(tries = TRIES)
  void sectorsThatShareTheCircleShowOneColourOnEveryBearing(
      @ForAll @IntRange(max = 359) int start,
      @ForAll @IntRange(min = 1, max = 178) int white,
      @ForAll @IntRange(min = 1, max = 178) int red,
      @ForAll @DoubleRange(max = 359.99) double seen) {
    Bearing first = Bearing.of(start);
    Bearing second = first.plus(white);
    Bearing third = second.plus(red);
    SectoredLight light =
        new SectoredLight(
            List.of(
                LightSector.of(first.degrees(), second.degrees(), LightColour.WHITE),
                LightSector.of(second.degrees(), third.degrees(), LightColour.RED),
                LightSector.of(third.degrees(), first.degrees(), LightColour.GREEN)));
    double turn = first.clockwiseTo(new Bearing(seen));
    LightColour expected =
        turn < white ? LightColour.WHITE : turn < white + red ? LightColour.RED : LightColour.GREEN;
    assertThat(light.seenOn(new Bearing(seen))).contains(expected);
  }

  @Example
  void refusesSectorsThatOverlap() {
    LightSector red = LightSector.of(350, 20, LightColour.RED);
    for (LightSector other :
        List.of(
            LightSector.of(10, 30, LightColour.WHITE),
            LightSector.of(340, 351, LightColour.WHITE),
            LightSector.of(355, 5, LightColour.WHITE),
            LightSector.of(300, 100, LightColour.WHITE),
            red)) {
      assertThatThrownBy(() -> new SectoredLight(List.of(red, other)))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("overlaps");
    }
    assertThat(
            new SectoredLight(List.of(red, LightSector.of(20, 350, LightColour.WHITE))).sectors())
        .hasSize(2);
  }

  @Example
  void refusesALightWithoutSectorsAndASectorWithoutWidth() {
    assertThatThrownBy(() -> new SectoredLight(List.of()))
        .hasMessage("a sectored light shows at least one colour");
    assertThatThrownBy(() -> LightSector.of(30, 30, LightColour.RED))
        .hasMessage("a sector from 30.0 to itself");
  }
}
