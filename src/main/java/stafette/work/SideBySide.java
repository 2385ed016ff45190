package stafette.work;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import stafette.check.Traits;
import stafette.plan.Favour;
import stafette.plan.Plan;
import stafette.plan.Rules;
import stafette.split.Alternatives;
import stafette.split.SplitResult;
import stafette.split.Splitter;
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
    SplitLine.Outcome main,
    Optional<Traits> traits,
    List<Column> columns,
    List<Alternatives.Dropped> dropped) {
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
  public record Column(SplitLine.Outcome outcome, Traits traits, List<Sentence> differs) {
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
   * Splits a line and looks for alternatives. All searches share the time asked for: each may take
   * as much of what is left as every one after it.
   *
   * @param most how many alternatives; 0 for none
   * @param progress told how the main search goes
   * @throws Refusal if the score, the line or a player is not there
   */
  public static SideBySide split(
      SplitLine.Request request,
      LimitsInForce limits,
      int most,
      Consumer<Splitter.Progress> progress)
      throws Refusal {
    if (most == 0) {
      return without(SplitLine.split(request, limits, progress));
    }
    int searches = 1 + Alternatives.mostSearches();
    double share = request.searchSeconds() / searches;
    SplitLine.Outcome main = SplitLine.split(request.within(share), limits, progress);
    if (main.plan().isEmpty()) {
      return without(main);
    }
    double left = request.searchSeconds() - main.searchSeconds();
    return new Searches(main, limits, left).sideBySide(main.plan().get().plan(), most);
  }

  private static SideBySide without(SplitLine.Outcome main) {
    return new SideBySide(
        main,
        main.plan().map(plan -> Traits.of(plan.plan(), main.brief().rules())),
        List.of(),
        List.of());
  }

  /** The searches for alternatives, with the time they have taken. */
  private static final class Searches {
    private final SplitLine.Outcome main;
    private final LimitsInForce limits;
    private final Map<Favour, Double> seconds = new EnumMap<>(Favour.class);
    private double left;

    Searches(SplitLine.Outcome main, LimitsInForce limits, double left) {
      this.main = main;
      this.limits = limits;
      this.left = left;
    }

    SideBySide sideBySide(Plan plan, int most) {
      Alternatives alternatives =
          Alternatives.to(
              plan,
              limits.weights(),
              most,
              (brief, searches) -> {
                long start = System.nanoTime();
                SplitResult result = Splitter.split(brief, SplitLine.after(start, left / searches));
                double taken = (System.nanoTime() - start) / 1e9;
                seconds.put(brief.rules().favour(), taken);
                left -= taken;
                return result;
              });
      Rules rules = main.brief().rules();
      Traits traits = Traits.of(plan, rules);
      List<Column> columns = new ArrayList<>();
      alternatives.kept().forEach(found -> columns.add(column(found, rules, traits)));
      return new SideBySide(main, Optional.of(traits), columns, alternatives.dropped());
    }

    private Column column(Alternatives.Alternative found, Rules rules, Traits ofMain) {
      Traits traits = Traits.of(found.plan(), rules);
      SplitLine.Outcome outcome =
          new SplitLine.Outcome(
              main.score(),
              found.plan().brief(),
              found.result(),
              Optional.of(SplitLine.judged(found.plan())),
              seconds.getOrDefault(found.favour(), 0.0),
              main.seats(),
              main.freed(),
              List.of());
      return new Column(outcome, traits, traits.against(ofMain));
    }
  }
}
