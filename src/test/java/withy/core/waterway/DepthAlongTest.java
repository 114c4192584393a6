package withy.core.waterway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import withy.core.geometry.Position;

class DepthAlongTest {
  private static final int SAMPLES = 4000;

  private static DepthField uneven(Random random) {
    double[] depths = new double[6 * 5];
    for (int i = 0; i < depths.length; i++) {
      depths[i] = random.nextInt(80) / 10.0 - 1;
    }
    return new DepthField(new Position(-20, 30), 20, 6, depths);
  }

  private static Position somewhere(Random random) {
    return new Position(random.nextInt(180) - 60, random.nextInt(140));
  }

  private static Position at(Position from, Position to, double share) {
    return new Position(
        from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
  }

  @Property(tries = 300)
  void findsWhatTheFinestSamplingFinds(@ForAll long seed) {
    Random random = new Random(seed);
    DepthField field = uneven(random);
    Position from = somewhere(random);
    Position to = somewhere(random);
    DepthAlong leg = new DepthAlong(field, from, to);
    double limit = random.nextInt(60) / 10.0;
    double least = Double.POSITIVE_INFINITY;
    double first = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= SAMPLES; i++) {
      double share = (double) i / SAMPLES;
      double depth = field.depth(at(from, to, share));
      least = Math.min(least, depth);
      first = depth < limit - 1e-9 ? Math.min(first, share) : first;
    }
    assertThat(field.depth(leg.shallowest()))
        .isLessThanOrEqualTo(least + 1e-9)
        .isCloseTo(least, within(0.02));
    @Nullable Position touched = leg.firstBelow(limit);
    if (first <= 1) {
      assertThat(touched).isNotNull();
    }
    if (touched != null) {
      double gone = from.distanceTo(touched) / Math.max(from.distanceTo(to), 1e-9);
      assertThat(gone).isLessThanOrEqualTo(first + 1e-9);
      assertThat(field.depth(touched)).isLessThanOrEqualTo(limit + 1e-6);
    }
  }

  @Test
  void findsTheRidgeBetweenTwoSamples() {
    DepthField ridge =
        new DepthField(new Position(0, 0), 20, 3, new double[] {5, 1, 5, 5, 1, 5, 5, 1, 5});
    DepthAlong across = new DepthAlong(ridge, new Position(0.3, 20), new Position(40, 20));
    assertThat(across.shallowest().x()).isEqualTo(20, within(1e-9));
    assertThat(ridge.depth(across.shallowest())).isEqualTo(1, within(1e-9));
  }

  @Test
  void touchesWhereTheWaterIsAsDeepAsTheKeel() {
    DepthField slope = new DepthField(new Position(0, 0), 10, 2, new double[] {5, 0, 5, 0});
    DepthAlong ashore = new DepthAlong(slope, new Position(0, 4), new Position(10, 4));
    assertThat(ashore.firstBelow(1.4)).isNotNull();
    assertThat(ashore.firstBelow(1.4).x()).isEqualTo(7.2, within(1e-9));
    assertThat(ashore.firstBelow(0)).isNull();
  }
}
