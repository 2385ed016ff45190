package stafette.bench;

import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import stafette.plan.Brief;
import stafette.split.SplitResult;
import stafette.split.Splitter;

/**
 * How long a split takes to its proof; it is stopped after two seconds. What came of it is printed
 * after each trial.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 1, jvmArgsAppend = "-Xmx2g")
public class SplitBench {
  private static final long BUDGET_NANOS = 2_000_000_000L;

  private static final Map<String, Supplier<Brief>> TASKS =
      Map.ofEntries(
          Map.entry("identical 64 x 4", () -> Rosters.identical(64, 4)),
          Map.entry("identical 512 x 8", () -> Rosters.identical(512, 8)),
          Map.entry("mixed 8 x 8", () -> Rosters.mixed(8, 8)),
          Map.entry("mixed 64 x 4", () -> Rosters.mixed(64, 4)),
          Map.entry("breathing 64 x 4", () -> Rosters.breathing(64, 4)),
          Map.entry("load 0.8 64 x 2", () -> Rosters.atCapacity(64, 2, 0.8)),
          Map.entry("load 1.0 64 x 2", () -> Rosters.atCapacity(64, 2, 1.0)),
          Map.entry("load 1.1 64 x 2", () -> Rosters.atCapacity(64, 2, 1.1)),
          Map.entry("load 1.4 64 x 2", () -> Rosters.atCapacity(64, 2, 1.4)),
          Map.entry("load 0.8 64 x 4", () -> Rosters.atCapacity(64, 4, 0.8)),
          Map.entry("load 1.0 64 x 4", () -> Rosters.atCapacity(64, 4, 1.0)),
          Map.entry("load 1.1 64 x 4", () -> Rosters.atCapacity(64, 4, 1.1)),
          Map.entry("load 1.4 64 x 4", () -> Rosters.atCapacity(64, 4, 1.4)),
          Map.entry("share 0.95 64 x 4", () -> Rosters.sharing(64, 4, 0.95, 20)),
          Map.entry("two on 32 x 4", () -> Rosters.alwaysOn(32, 4, 2, 0.8)));

  /** Bars by players. */
  @Param({
    "identical 64 x 4",
    "identical 512 x 8",
    "mixed 8 x 8",
    "mixed 64 x 4",
    "breathing 64 x 4",
    "load 0.8 64 x 2",
    "load 1.0 64 x 2",
    "load 1.1 64 x 2",
    "load 1.4 64 x 2",
    "load 0.8 64 x 4",
    "load 1.0 64 x 4",
    "load 1.1 64 x 4",
    "load 1.4 64 x 4",
    "share 0.95 64 x 4",
    "two on 32 x 4"
  })
  private String task = "";

  private Brief brief = Rosters.identical(1, 2);
  private String outcome = "";

  /** Makes the brief of the task. */
  @Setup
  public void prepare() {
    Supplier<Brief> briefs = TASKS.get(task);
    if (briefs == null) {
      throw new IllegalArgumentException("no such task: " + task);
    }
    brief = briefs.get();
  }

  /** Splits the line. */
  @Benchmark
  public SplitResult split() {
    long start = System.nanoTime();
    SplitResult result = Splitter.split(brief, () -> System.nanoTime() - start > BUDGET_NANOS);
    outcome =
        result.match(
            best -> "optimal, " + best.cost() + " points",
            none -> "proven impossible",
            stopped -> "stopped, cost " + stopped.cost() + ", bound " + stopped.bound());
    return result;
  }

  /** Says what came of it. */
  @TearDown(Level.Trial)
  public void report() {
    System.out.println(task + ": " + outcome);
  }
}
