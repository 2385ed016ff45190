package stafette.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import stafette.check.JudgedPlan;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.PlanEdit;
import stafette.split.Splitter;

/**
 * From a drag to the new verdict, without the window: a handoff of a plan for 64 bars and four
 * players is moved by a stroke and the plan judged anew. JMH prints the distribution.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class DragBench {
  private final Plan plan = best();
  private int step;

  /** One event of a drag. */
  @Benchmark
  public JudgedPlan drag() {
    step++;
    int number = step / 7 % plan.handoffs().size();
    int by = step % 7 - 3;
    Handoff handoff = plan.handoffs().get(number);
    Plan moved =
        plan.with(
                new PlanEdit.Move(
                    number, handoff.enters().first() + by, handoff.leaves().last() + by))
            .orElse(plan);
    return JudgedPlan.atOnce(moved);
  }

  private static Plan best() {
    return Splitter.split(Rosters.identical(64, 4), () -> false)
        .match(
            best -> best.plan(),
            none -> {
              throw new IllegalStateException("no plan: " + none.reasons());
            },
            stopped -> stopped.plan().orElseThrow());
  }
}
