package stafette.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import stafette.plan.Brief;
import stafette.split.MiddleBriefs;
import stafette.split.ReferenceModel;
import stafette.split.Splitter;

/**
 * The search and a general constraint solver on the same briefs, in sum: those of the first hundred
 * of middle size that the solver proves within two seconds with one thread. Its models are written
 * down beforehand and not counted; the search begins from the brief.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 5)
@Fork(1)
public class VersusBench {
  private static final int BRIEFS = 100;
  private static final long MOST_NANOS = 2_000_000_000L;
  private static final double PATIENCE = 2;

  private final List<Brief> briefs = new ArrayList<>();
  private final List<ReferenceModel> models = new ArrayList<>();

  /** Chooses the briefs. */
  @Setup
  public void choose() {
    for (int seed = 1; seed <= BRIEFS; seed++) {
      Brief brief = MiddleBriefs.of(seed);
      ReferenceModel model = ReferenceModel.of(brief);
      long start = System.nanoTime();
      if (model.solve(PATIENCE).proven() && System.nanoTime() - start <= MOST_NANOS) {
        briefs.add(brief);
        models.add(model);
      }
    }
    System.out.println(briefs.size() + " of " + BRIEFS + " briefs");
  }

  /** All briefs by the search. */
  @Benchmark
  public void search(Blackhole hole) {
    briefs.forEach(brief -> hole.consume(Splitter.split(brief, () -> false)));
  }

  /** All models by the constraint solver. */
  @Benchmark
  public void constraintSolver(Blackhole hole) {
    models.forEach(model -> hole.consume(model.solve(PATIENCE)));
  }
}
