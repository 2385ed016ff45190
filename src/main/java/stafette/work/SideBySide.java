package stafette.work;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import stafette.ask.SplitRequest;
import stafette.check.JudgedPlan;
import stafette.check.Traits;
import stafette.keep.LimitsInForce;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Plan;
import stafette.plan.Rules;
import stafette.split.Alternatives;
import stafette.split.SplitResult;
import stafette.split.Splitter;
import stafette.split.Workbench;
import stafette.split.nearest.NearestPlan;
import stafette.words.Refusal;
import stafette.words.Sentence;

/**
 * A split line with its alternatives, each the best for what it favours.
 *
 * @param main the plan that was asked for, or why there is none
 * @param traits of the main plan, if there is one
 * @param columns the alternatives, numbered from 1; none without a main plan
 * @param dropped what else was searched, and why it gives no alternative
 */
public record SideBySide(
    SplitLine.SplitOutcome main,
    Optional<Traits> traits,
    List<Column> columns,
    List<Alternatives.Dropped> dropped) {
  /** So often the searches for alternatives may ask whether to stop. */
  private static final long QUESTIONS = 2_000_000;

  public SideBySide {
    columns = List.copyOf(columns);
    dropped = List.copyOf(dropped);
  }

  /**
   * An alternative.
   *
   * @param outcome what came of the search that favours something else, as if it had been asked for
   * @param traits compared by the weights of the main plan
   * @param differs what is different from the main plan, in words
   */
  public record Column(SplitLine.SplitOutcome outcome, Traits traits, List<Sentence> differs) {
    public Column {
      differs = List.copyOf(differs);
    }

    public Favour favour() {
      return outcome.brief().rules().favour();
    }

    public JudgedPlan plan() {
      return outcome.plan().orElseThrow();
    }
  }

  /**
   * Splits a line and looks for alternatives. These share so much work: each may take as much of
   * what is left as every one after it. The time asked for ends all of them.
   *
   * @param most how many alternatives; 0 for none
   * @param progress told how the main search goes
   * @throws Refusal if the score, the line or a player is not there
   */
  public static SideBySide split(
      SplitRequest request, LimitsInForce limits, int most, Consumer<Splitter.Progress> progress)
      throws Refusal {
    if (most == 0) {
      return without(SplitLine.split(request, limits, progress));
    }
    SplitLine.SplitOutcome main = SplitLine.split(request, limits, progress);
    if (main.plan().isEmpty()) {
      return without(main);
    }
    double left = request.searchSeconds() - main.searchSeconds();
    Searches searches =
        new Searches(main, Workbench::new, left, () -> false, ComparingProgress.UNTOLD);
    Plan plan = main.plan().get().plan();
    return searches.sideBySide(plan, Alternatives.to(plan, limits.weights(), most, searches::best));
  }

  private static SideBySide without(SplitLine.SplitOutcome main) {
    return new SideBySide(
        main,
        main.plan().map(plan -> Traits.of(plan.plan(), main.brief().rules())),
        List.of(),
        List.of());
  }

  /** Is told how far the searches have come. */
  public interface ComparingProgress {
    /** Hears nothing. */
    ComparingProgress UNTOLD = (favour, left) -> {};

    /**
     * A search begins.
     *
     * @param favour what it favours
     * @param left searches to come at most, this one included
     */
    void searching(Favour favour, int left);
  }

  /**
   * Looks for alternatives to a plan that stands already, found or made by hand.
   *
   * @param main what is asked, with the plan
   * @param isBest whether the plan is known to be the best for what it favours; if not, that is
   *     searched too
   * @param seconds for all searches
   * @param stop asked often; ends everything, with what was found so far
   */
  static SideBySide beside(
      SplitLine.SplitOutcome main,
      boolean isBest,
      LimitsInForce limits,
      Workbench workbench,
      double seconds,
      BooleanSupplier stop,
      ComparingProgress progress) {
    Plan plan = main.plan().orElseThrow().plan();
    Searches searches = new Searches(main, () -> workbench, seconds, stop, progress);
    int most = Alternatives.mostSearches();
    return searches.sideBySide(
        plan,
        isBest
            ? Alternatives.to(plan, limits.weights(), most, searches::best)
            : Alternatives.toAny(plan, limits.weights(), most, searches::best));
  }

  /** The searches for alternatives, with the time they have taken. */
  private static final class Searches {
    private final SplitLine.SplitOutcome main;
    private final Supplier<Workbench> workbench;
    private final BooleanSupplier stop;
    private final CountedWork work;
    private final ComparingProgress progress;
    private final Map<Favour, Double> seconds = new EnumMap<>(Favour.class);

    Searches(
        SplitLine.SplitOutcome main,
        Supplier<Workbench> workbench,
        double left,
        BooleanSupplier stop,
        ComparingProgress progress) {
      this.main = main;
      this.workbench = workbench;
      this.work = new CountedWork(QUESTIONS, Deadline.ofSeconds(left, stop)::isOver);
      this.stop = stop;
      this.progress = progress;
    }

    SplitResult best(Brief brief, int searches) {
      if (stop.getAsBoolean()) {
        return new SplitResult.Stopped(Optional.empty(), OptionalInt.empty(), 0);
      }
      progress.searching(brief.rules().favour(), searches);
      long start = System.nanoTime();
      SplitResult result =
          NearestPlan.ofShareAsked(brief, workbench.get(), work.share(searches), told -> {})
              .result();
      seconds.put(brief.rules().favour(), (System.nanoTime() - start) / 1e9);
      return result;
    }

    SideBySide sideBySide(Plan plan, Alternatives alternatives) {
      Rules rules = main.brief().rules();
      Traits traits = Traits.of(plan, rules);
      List<Column> columns = new ArrayList<>();
      alternatives.kept().forEach(found -> columns.add(column(found, rules, traits)));
      return new SideBySide(main, Optional.of(traits), columns, alternatives.dropped());
    }

    private Column column(Alternatives.Alternative found, Rules rules, Traits ofMain) {
      Traits traits = Traits.of(found.plan(), rules);
      SplitLine.SplitOutcome outcome =
          new SplitLine.SplitOutcome(
              main.score(),
              main.asked(),
              found.plan().brief(),
              found.result(),
              Optional.of(SplitLine.judged(found.plan())),
              seconds.getOrDefault(found.favour(), 0.0),
              main.seats(),
              main.freed(),
              List.of(),
              List.of());
      return new Column(outcome, traits, traits.against(ofMain));
    }
  }
}
