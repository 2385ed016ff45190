package stafette.split;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;
import stafette.Invented;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.Lock;
import stafette.plan.OverlapRule;
import stafette.score.Line;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMark;

/** While a line is open, what was worked out before a change is kept and changes no answer. */
class WorkbenchTest {
  private static final int CHANGES = 6;

  @Property(tries = 120)
  @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
  void a_kept_workbench_gives_the_same_answer_and_the_same_cost_as_a_new_one(@ForAll long seed) {
    Random random = new Random(seed);
    Brief brief = SmallBriefs.of(seed, 12, 4);
    Workbench kept = new Workbench();
    for (int i = 0; i <= CHANGES; i++) {
      SplitResult fresh = search(brief, new Workbench());
      assertEquals(answer(fresh), answer(search(brief, kept)), brief::toString);
      Statistics.label("has a plan")
          .collect(fresh instanceof SplitResult.Best)
          .coverage(
              plan -> {
                plan.check(true).count(count -> count > CHANGES);
                plan.check(false).count(count -> count > CHANGES);
              });
      brief = changed(brief, fresh, random);
    }
  }

  private static SplitResult search(Brief brief, Workbench workbench) {
    return Splitter.split(brief, workbench, () -> false, progress -> {});
  }

  /** Of plans that cost the same, any may come. */
  private static String answer(SplitResult result) {
    return result.match(
        best -> "a plan for " + best.cost(), none -> "none: " + none.reasons(), Object::toString);
  }

  private static Brief changed(Brief brief, SplitResult result, Random random) {
    return switch (random.nextInt(8)) {
      case 0 -> brief.with(brief.rules().with(SmallBriefs.locks(brief, random)));
      case 1 -> brief.with(brief.rules().with(List.of()));
      case 2 -> dragged(brief, result, random);
      case 3 -> atAnotherTempo(brief, random);
      case 4 -> brief.with(brief.rules().with(Hocket.values()[random.nextInt(4)]));
      case 5 -> brief.with(brief.rules().with(new OverlapRule(1, OptionalInt.of(2))));
      case 6 ->
          brief.with(brief.rules().favouring(Favour.values()[random.nextInt(5)], Invented.WEIGHTS));
      default -> withoutTheLast(brief);
    };
  }

  private static Brief withoutTheLast(Brief brief) {
    int left = Math.max(1, brief.players().size() - 1);
    return new Brief(
        brief.lines(), brief.players().subList(0, left), brief.rules().with(List.of()));
  }

  /** The first handoff of the plan, if there is one, a stroke later. */
  private static Brief dragged(Brief brief, SplitResult result, Random random) {
    List<Lock> locks = new ArrayList<>();
    if (result instanceof SplitResult.Best best && !best.plan().handoffs().isEmpty()) {
      int landing = best.plan().handoffs().get(0).leaves().last();
      int stroke = Math.min(landing + random.nextInt(2), brief.line().count() - 1);
      locks.add(new Lock.At(0, stroke, stroke));
    }
    return brief.with(brief.rules().with(locks));
  }

  private static Brief atAnotherTempo(Brief brief, Random random) {
    Line line = brief.line();
    TempoMark mark = new TempoMark(BeatUnit.QUARTER, Rational.of(60 + random.nextInt(80)));
    List<Line> lines = brief.linesAt(line.tempo().scaledTo(line.stroke(0).onset(), mark));
    return new Brief(lines, brief.players(), brief.rules());
  }
}
