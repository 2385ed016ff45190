package stafette.work;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import stafette.limits.Capability;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Seat;
import stafette.score.Line;
import stafette.split.SplitResult;
import stafette.split.Splitter;
import stafette.split.Workbench;
import stafette.time.TempoMark;

/**
 * A line of an open score with what is asked for it. Other questions about it are answered from the
 * same open score, and a search finds what earlier ones have worked out. Not for several threads at
 * a time.
 */
public final class OpenLine {
  private final Briefing briefing;
  private final LimitsInForce limits;
  private final Workbench workbench;

  private OpenLine(Briefing briefing, LimitsInForce limits, Workbench workbench) {
    this.briefing = briefing;
    this.limits = limits;
    this.workbench = workbench;
  }

  /**
   * A line of a score that is open.
   *
   * @throws Refusal if the line or a player is not there, or a seat is asked for nobody
   */
  public static OpenLine in(OpenScore score, SplitLine.Request request, LimitsInForce limits)
      throws Refusal {
    LineRequest.Found found = request.line().in(score);
    return new OpenLine(Briefing.of(request, limits, found), limits, new Workbench());
  }

  /**
   * Something else asked of the same score.
   *
   * @throws Refusal as {@link #in} does
   */
  public OpenLine asking(SplitLine.Request other) throws Refusal {
    return new OpenLine(briefing.with(other), limits, workbench);
  }

  /**
   * The same with what a player was measured to be capable of.
   *
   * @param capabilities by technique; techniques left out stay as the tables have them
   */
  public OpenLine measuring(String player, Map<String, Capability> capabilities) throws Refusal {
    return new OpenLine(briefing.measuring(player, capabilities), limits, workbench);
  }

  public SplitLine.Request asked() {
    return briefing.request();
  }

  /** What was said of players by hand, by player and technique. */
  public Map<String, Map<String, Capability>> measured() {
    return briefing.measured().byHand();
  }

  public OpenScore score() {
    return briefing.score();
  }

  public Brief brief() {
    return briefing.brief();
  }

  public Line line() {
    return brief().line();
  }

  /** Of the players whose seats are known, by name. */
  public Map<String, Seat> seats() {
    return briefing.seats();
  }

  /** The tempo at the line's start. */
  public TempoMark tempo() {
    return line().tempo().at(line().stroke(0).onset());
  }

  /**
   * Plans it.
   *
   * @param stop asked often; ends the search if it says yes
   * @param progress told whenever a better plan or a higher bound is known
   */
  public SplitLine.Outcome plan(BooleanSupplier stop, Consumer<Splitter.Progress> progress)
      throws Refusal {
    return SplitLine.split(briefing, limits, workbench, stop, progress);
  }

  /**
   * A plan that was made for something else, taken over: its segments as they are. Empty if it has
   * players, techniques or strokes that are not here.
   */
  public Optional<Plan> adopted(Plan plan) {
    try {
      return plan.brief().lines().size() == brief().lines().size()
          ? Optional.of(new Plan(brief(), plan.segments()))
          : Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** A report of a plan that was changed by hand, to be kept as any other. */
  public SplitLine.Outcome outcome(JudgedPlan judged) {
    int cost = judged.verdict().cost().total();
    return new SplitLine.Outcome(
        score(),
        brief(),
        new SplitResult.Stopped(Optional.of(judged.plan()), OptionalInt.of(cost), 0),
        Optional.of(judged),
        0,
        seats(),
        List.of());
  }
}
