package withy.benchmark;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import withy.core.Chance;
import withy.core.Term;
import withy.core.hydrography.Blueprint;
import withy.core.hydrography.WaterGenerator;
import withy.core.mark.Practice;
import withy.core.waterway.Keel;
import withy.core.waterway.Waterway;

/** How long one stretch of water takes on one core; 10 ms are allowed at the median. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class WaterGeneration {
  @Param({
    "harbour-entrance",
    "river",
    "estuary",
    "fork",
    "converging",
    "offshore-shoal",
    "isolated-rock",
    "coastal-passage"
  })
  public String blueprint = "river";

  private int seed;

  @Benchmark
  public Waterway draw() {
    Blueprint kind = Term.parse(Blueprint.class, blueprint);
    return WaterGenerator.water(Practice.IALA_A, kind, Keel.CRUISER, Chance.of(seed++, 0));
  }
}
