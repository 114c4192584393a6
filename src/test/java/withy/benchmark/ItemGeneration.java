package withy.benchmark;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import withy.core.item.Composition;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;

/** Items drawn in a second on one core; 100,000 are wanted. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class ItemGeneration {
  private static final Composition ALL = new Composition(List.of(), List.of(), null, 10);

  @Param({"iala-a", "iala-b", "canada", "usa"})
  public String practice = "iala-a";

  private int index;

  @Benchmark
  public Item draw() {
    return ItemGenerator.item(Practice.parse(practice), ALL, 1, index++);
  }
}
