package stafette.work;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import stafette.ask.Briefing;
import stafette.ask.SplitRequest;
import stafette.ask.TempiWish;
import stafette.check.JudgedPlan;
import stafette.check.SegmentReport;
import stafette.check.Verdict;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.split.tempo.FastestTempo;
import stafette.split.tempo.TempoCell;
import stafette.split.tempo.TempoTable;
import stafette.time.TempoMark;
import stafette.words.Refusal;

/** Tries a line at several tempi with every number of players, and judges every plan again. */
public final class CompareTempi {
  /** So often all searches together may ask whether to stop: enough for a dozen hard ones. */
  private static final long QUESTIONS = 6_000_000;

  private CompareTempi() {}

  /**
   * What is asked.
   *
   * @param split the line, the players and the rules; the time is that of all searches together
   * @param tempi at which; about eight round the present one if empty
   */
  public record TempoRequest(SplitRequest split, Optional<TempiWish> tempi) {}

  /**
   * How far the searches have come.
   *
   * @param searched how many have ended
   */
  public record TempiProgress(int searched) {}

  /**
   * What came of it.
   *
   * @param score the score the line was taken from
   * @param brief what was asked, at the present tempo
   * @param table tempo against number of players
   * @param verdicts on every plan of the table and the edges
   * @param presentPlan the plan of all players at the present tempo, if there is one
   * @param searchSeconds how long all searches took
   */
  public record TempoOutcome(
      OpenScore score,
      Brief brief,
      TempoTable table,
      Map<Plan, Verdict> verdicts,
      Optional<JudgedPlan> presentPlan,
      double searchSeconds) {
    public TempoOutcome {
      verdicts = Map.copyOf(verdicts);
    }

    /** The present tempo, in the unit of the table. */
    public TempoMark present() {
      return table.presentRow().mark();
    }

    /** The highest strain of a cell's plan. */
    public OptionalDouble strain(TempoCell cell) {
      return cell.plan().map(this::verdict).stream()
          .flatMap(verdict -> verdict.segments().stream())
          .mapToDouble(SegmentReport::strain)
          .max();
    }

    Verdict verdict(Plan plan) {
      return Objects.requireNonNull(verdicts.get(plan));
    }
  }

  /**
   * Tries the tempi.
   *
   * @throws Refusal if the score, the line or a player is not there
   */
  public static TempoOutcome compare(TempoRequest request, LimitsInForce limits) throws Refusal {
    return compare(request, limits, () -> false, progress -> {});
  }

  /**
   * Compares tempi, telling how the searches go.
   *
   * @param stop asked often; ends all of them, with what was found so far, if it says yes
   * @param progress told as often
   */
  public static TempoOutcome compare(
      TempoRequest request,
      LimitsInForce limits,
      BooleanSupplier stop,
      Consumer<TempiProgress> progress)
      throws Refusal {
    Briefing briefing = Briefing.of(request.split(), limits);
    Brief brief = briefing.brief();
    TempoMark present = brief.line().tempo().at(brief.line().stroke(0).onset());
    TempiWish wish = request.tempi().orElseGet(() -> TempiWish.around(present));
    List<TempoMark> marks = wish.with(present);
    long start = System.nanoTime();
    Deadline deadline = Deadline.ofSeconds(request.split().searchSeconds(), stop);
    CountedWork time = new CountedWork(QUESTIONS, deadline::isOver);
    TempoTable table =
        TempoTable.of(marks, marks.indexOf(wish.in(present)), briefing::at, shares(time, progress));
    double seconds = (System.nanoTime() - start) / 1e9;
    Map<Plan, Verdict> verdicts = verdicts(table);
    Optional<JudgedPlan> now =
        table
            .presentRow()
            .plan()
            .map(plan -> JudgedPlan.of(plan, Objects.requireNonNull(verdicts.get(plan))));
    return new TempoOutcome(briefing.score(), brief, table, verdicts, now, seconds);
  }

  private static IntFunction<BooleanSupplier> shares(
      CountedWork time, Consumer<TempiProgress> progress) {
    AtomicInteger begun = new AtomicInteger();
    return left -> {
      TempiProgress before = new TempiProgress(begun.getAndIncrement());
      BooleanSupplier over = time.share(left);
      return () -> {
        progress.accept(before);
        return over.getAsBoolean();
      };
    };
  }

  private static Map<Plan, Verdict> verdicts(TempoTable table) {
    Map<Plan, Verdict> verdicts = new HashMap<>();
    Stream.concat(
            table.rows().stream().flatMap(row -> row.cells().stream()).map(TempoCell::plan),
            table.fastest().stream().map(FastestTempo::plan))
        .flatMap(Optional::stream)
        .forEach(plan -> verdicts.computeIfAbsent(plan, SplitLine::verdict));
    return verdicts;
  }
}
