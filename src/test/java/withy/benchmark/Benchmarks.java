package withy.benchmark;

import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Runs every benchmark of this package, briefly, tells how large charts are, and then puts the true
 * server under load; with arguments only the benchmarks that they name.
 */
public final class Benchmarks {
  private Benchmarks() {}

  public static void main(String[] args) throws Exception {
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
    if (args.length == 0) {
      PictureSizes.print();
      Load.main(args);
      ReviewScale.main(args);
    }
  }
}
