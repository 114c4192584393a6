package withy.benchmark;

import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** Runs every benchmark of this package, briefly; the arguments name some of them. */
public final class Benchmarks {
  private Benchmarks() {}

  public static void main(String[] args) throws RunnerException {
    String which = args.length == 0 ? "withy\\.benchmark\\." : String.join("|", args);
    new Runner(
            new OptionsBuilder()
                .include(which)
                .forks(1)
                .warmupIterations(3)
                .warmupTime(TimeValue.seconds(2))
                .measurementIterations(3)
                .measurementTime(TimeValue.seconds(2))
                .build())
        .run();
  }
}
