package stafette.work;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import stafette.check.Judge;
import stafette.check.JudgedPlan;
import stafette.check.PartTrial;
import stafette.check.SegmentReport;
import stafette.check.SegmentRules;
import stafette.check.Strain;
import stafette.check.TempoWindow;
import stafette.check.alone.VerdictWords;
import stafette.limits.Assurance;
import stafette.limits.Demand;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Margin;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.TurnsInWords;
import stafette.score.Line;
import stafette.split.SplitResult;
import stafette.words.Sentence;

/** What an orchestrator wants to hear of a plan before its figures. */
public final class PlanInWords {
  /** From this share of a breath on, it is said that hardly any is left: a judgement. */
  private static final double BREATH_WORTH_SAYING = 0.9;

  private PlanInWords() {}

  /** Who takes turns of what length, and how spent they get at the most. */
  public static Sentence turns(JudgedPlan judged) {
    Sentence turns = TurnsInWords.of(judged.plan());
    Sentence tired = percent(judged, SegmentReport::tiredness);
    boolean winds =
        judged.plan().segments().stream()
            .anyMatch(segment -> judged.plan().player(segment).instrument().isWind());
    return winds
        ? Sentence.of(
            "{0}; most tired {1}, breath {2}", turns, tired, percent(judged, SegmentReport::breath))
        : Sentence.of("{0}; most tired {1}", turns, tired);
  }

  private static Sentence percent(JudgedPlan judged, ToDoubleFunction<SegmentReport> what) {
    double most = judged.verdict().segments().stream().mapToDouble(what).max().orElse(0);
    return Sentence.name(Strain.percent(most));
  }

  /** Why it is this plan. */
  public static Sentence why(SplitResult result, JudgedPlan judged) {
    if (result.rotation().isPresent()) {
      int more = judged.verdict().cost().total() - result.rotation().get().cheapestCost();
      return why(result.rotation().get(), more, result.isBest());
    }
    boolean regular = judged.plan().brief().rules().favour() == Favour.REGULAR;
    return result.match(
        best ->
            regular
                ? Sentence.of("no regular rotation costs less under these weights")
                : Sentence.of("no plan costs less under these weights"),
        none -> Sentence.NONE,
        stopped -> Sentence.of("the best that was found; there may be one that costs less"));
  }

  private static Sentence why(SplitResult.InRotation rotation, int more, boolean proven) {
    if (more > 0) {
      return Sentence.of(
          "turns in a fixed order, which rehearse themselves: they cost {0} more than the cheapest"
              + " plan that was found (limit {1})",
          more, rotation.limit());
    }
    return proven
        ? Sentence.of("turns in a fixed order, which rehearse themselves; no plan costs less")
        : Sentence.of("turns in a fixed order, which rehearse themselves");
  }

  /** Who was asked and has nothing to play, each with the reason. */
  public static List<Sentence> notUsed(JudgedPlan judged) {
    Brief brief = judged.plan().brief();
    List<String> playing = judged.plan().playing();
    return IntStream.range(0, brief.players().size())
        .filter(player -> !playing.contains(brief.players().get(player).name()))
        .mapToObj(player -> notUsed(brief, player))
        .toList();
  }

  private static Sentence notUsed(Brief brief, int index) {
    Player player = brief.players().get(index);
    if (PartTrial.isAble(brief, index)) {
      return PartTrial.isFree(brief, index)
          ? Sentence.of("{0}, not needed", player.name())
          : Sentence.of("{0}, who has other notes to play", player.name());
    }
    Line line = brief.line();
    if (player.skills().isEmpty()) {
      return Sentence.of("{0}, who has no technique for this line", player.name());
    }
    if (line.strokes().stream().noneMatch(s -> SegmentRules.inRange(player.instrument(), s))) {
      return Sentence.of("{0}, who lacks these notes", player.name());
    }
    return tooSlow(player, line);
  }

  private static Sentence tooSlow(Player player, Line line) {
    double asked = Demand.usualRatePerSecond(line);
    double able =
        player.skills().stream()
            .mapToDouble(skill -> skill.capability().sustainedPerSecond())
            .max()
            .orElse(0);
    return able < asked
        ? Sentence.of(
            "{0}, too slow for this line ({1} of {2} a second)",
            player.name(), Sentence.decimal(able, 1), Sentence.decimal(asked, 1))
        : Sentence.of("{0}, who manages no bar of it", player.name());
  }

  /** How far the tempo may drift. */
  public static Sentence reserve(JudgedPlan judged) {
    return judged
        .window()
        .map(PlanInWords::reserve)
        .orElse(Sentence.of("none: it does not hold at this tempo"));
  }

  private static Sentence reserve(TempoWindow window) {
    return Sentence.of(
        "tempo +{0} / −{1}", faster(window.fastestFactor()), slower(window.slowestFactor()));
  }

  private static Sentence faster(double factor) {
    return factor == Double.POSITIVE_INFINITY
        ? Sentence.of("any")
        : Sentence.of("{0} %", inward((factor - 1) * 100));
  }

  private static Sentence slower(double factor) {
    return factor == 0 ? Sentence.of("any") : Sentence.of("{0} %", inward((1 - factor) * 100));
  }

  /** Rounded down, in tenths below ten. */
  private static BigDecimal inward(double percent) {
    return percent < 10
        ? Sentence.decimal(Math.floor(percent * 10) / 10, 1)
        : Sentence.decimal(Math.floor(percent), 0);
  }

  /** What a conductor and the players have to know beforehand; empty where all is well. */
  public static List<Sentence> cautions(JudgedPlan judged, Margin asked) {
    List<Sentence> cautions = new ArrayList<>();
    if (judged.verdict().holds() && !keeps(judged, asked)) {
      cautions.add(
          Sentence.of(
              "this plan does not leave {0} % of the tempo either way; keep to the written tempo",
              Sentence.decimal(asked.percent(), asked.percent() % 1 == 0 ? 0 : 1)));
    }
    mostBreath(judged)
        .ifPresent(
            index ->
                cautions.add(
                    Sentence.of(
                        "at one place {0} has only {1} % of a breath left",
                        judged.plan().player(judged.plan().segments().get(index)).name(),
                        Math.max(
                            0,
                            100
                                - Strain.wholePercent(
                                    judged.verdict().segments().get(index).breath())))));
    return cautions;
  }

  private static boolean keeps(JudgedPlan judged, Margin asked) {
    Brief brief = judged.plan().brief();
    if (brief.rules().margin().equals(asked)) {
      return judged.verdict().keepsMargin();
    }
    Brief within = brief.with(brief.rules().with(asked));
    return Judge.holdsWithinMargin(new Plan(within, judged.plan().segments()));
  }

  private static OptionalInt mostBreath(JudgedPlan judged) {
    List<SegmentReport> reports = judged.verdict().segments();
    return IntStream.range(0, reports.size())
        .filter(i -> reports.get(i).breath() > BREATH_WORTH_SAYING)
        .reduce(
            (one, other) -> reports.get(other).breath() > reports.get(one).breath() ? other : one);
  }

  /** That there is no plan for the share asked for, and for how many the nearest one is. */
  public static Optional<Sentence> nearest(SplitLine.SplitOutcome outcome) {
    return outcome.isNearest()
        ? outcome.plan().map(plan -> nearest(plan, outcome.asked().rules().assurance()))
        : Optional.empty();
  }

  /** The same of a plan that does not hold for the share asked for. */
  public static Sentence nearest(JudgedPlan plan, Assurance asked) {
    return Sentence.of(
        "no plan that {0} manage; this is the nearest: {1}",
        asked, VerdictWords.ofPlan(plan.plan(), plan.verdict()));
  }
}
