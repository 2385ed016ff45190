package stafette.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Predicate;
import stafette.ask.Allowance;
import stafette.ask.Briefing;
import stafette.ask.LineRequest;
import stafette.ask.LockWish;
import stafette.ask.PlayerWish;
import stafette.ask.Reopening;
import stafette.ask.SplitRequest;
import stafette.ask.TempoWish;
import stafette.check.JudgedPlan;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.limits.Capability;
import stafette.limits.Saying;
import stafette.limits.Skill;
import stafette.limits.Technique;
import stafette.limits.TypedNames;
import stafette.limits.Way;
import stafette.plan.Brief;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Seat;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.NoSuchLine;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;
import stafette.split.SplitResult;
import stafette.split.Splitter;
import stafette.split.Workbench;
import stafette.time.TempoMark;
import stafette.words.Refusal;

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
  public static OpenLine in(OpenScore score, SplitRequest request, LimitsInForce limits)
      throws Refusal {
    LineRequest.FoundLine found = request.line().in(score);
    return new OpenLine(Briefing.of(request, limits, found), limits, new Workbench());
  }

  /**
   * Something else asked of the same score.
   *
   * @throws Refusal as {@link #in} does
   */
  public OpenLine asking(SplitRequest other) throws Refusal {
    return new OpenLine(briefing.with(other), limits, workbench);
  }

  /**
   * Asks as {@link #asking} does, but locks that the other question leaves no place for are given
   * up rather than refused.
   */
  public OpenLine askingWithoutLostLocks(SplitRequest other) throws Refusal {
    OpenLine free = asking(other.with(other.relaying().with(List.<LockWish>of())));
    List<LockWish> kept =
        other.relaying().locks().stream().filter(lock -> lock.fits(free.brief())).toList();
    return kept.isEmpty() ? free : free.asking(other.with(other.relaying().with(kept)));
  }

  /**
   * The line with slashes through stems read otherwise; the score is read again.
   *
   * @throws Refusal if the score can't be read any more, or as {@link #in} does
   */
  public OpenLine reading(Tremolo tremolo) throws Refusal {
    OpenScore score = OpenScore.open(score().file(), tremolo, false, limits);
    OpenLine again = new OpenLine(briefing.in(score, tremolo), limits, new Workbench());
    return again.askingWithoutLostLocks(
        again.asked().with(again.asked().relaying().with(asked().relaying().locks())));
  }

  /**
   * The line with a technique that not everybody has, allowed to a player or no longer.
   *
   * @throws Refusal if the player's instrument has no such technique
   */
  public OpenLine allowing(String player, String technique, boolean allowed) throws Refusal {
    List<Allowance> allowances = new ArrayList<>(allowances());
    Allowance one = new Allowance(Optional.of(player), technique);
    allowances.removeIf(one::equals);
    if (allowed) {
      allowances.add(one);
    }
    return askingWithoutLostLocks(asked().with(asked().players(), allowances));
  }

  /**
   * The line with what a remedy changes, so that its plan can be {@link #adopted}. Empty if it
   * changes the notes, which can't be asked for.
   */
  public Optional<OpenLine> under(Remedy remedy) {
    Brief changed = remedy.plan().plan().brief();
    SplitRequest other = remedy.instead(asked(), briefing.wishes());
    TempoMark mark = tempoOf(changed.line());
    TempoWish wish = new TempoWish(Optional.of(mark.unit()), mark.perMinute());
    try {
      OpenLine open = asking(mark.equals(tempo()) ? other : other.with(other.line().with(wish)));
      return open.isFor(changed) ? Optional.of(open) : Optional.empty();
    } catch (Refusal notToBeAsked) {
      return Optional.empty();
    }
  }

  /** Whether a brief asks for the same, in other words or not. */
  private boolean isFor(Brief other) {
    Rules rules = other.rules().with(brief().rules().margin());
    return brief().rules().equals(rules)
        && brief().players().equals(other.players())
        && brief().hasNotesOf(other);
  }

  /** What is allowed, player by player. */
  private List<Allowance> allowances() {
    return asked().allowances().stream()
        .flatMap(allowance -> allowance.forEachOf(brief().players()).stream())
        .distinct()
        .toList();
  }

  /** Whether a player may use a technique that not everybody has. */
  public boolean isAllowed(Player player, Technique technique) {
    return asked().allowances().stream()
        .anyMatch(allowance -> allowance.covers(player.name(), player.instrument(), technique));
  }

  /** How many tones the fullest chord has from which the line takes its own. */
  public int tones() {
    try {
      Line chords = asked().line().choice().with(new ToneChoice.All()).take(score().score());
      return chords.strokes().stream().mapToInt(stroke -> stroke.tones().size()).max().orElse(1);
    } catch (NoSuchLine onlyAmongCues) {
      return line().strokes().stream().mapToInt(stroke -> stroke.tones().size()).max().orElse(1);
    }
  }

  /**
   * The line with what a player was measured to be capable of.
   *
   * @param capabilities by technique; techniques left out stay as the tables have them
   */
  public OpenLine measuring(String player, Map<String, Capability> capabilities) throws Refusal {
    return new OpenLine(briefing.measuring(player, capabilities), limits, workbench);
  }

  /** The line of a plan that was opened again, with all that was asked for it. */
  static OpenLine of(Reopening reopening, LimitsInForce limits) throws Refusal {
    LineRequest.FoundLine found = reopening.request().line().in(reopening.score());
    return new OpenLine(
        Briefing.of(reopening.request(), limits, found, reopening.measured(limits)),
        limits,
        new Workbench());
  }

  /** The line with a player who leaves out for it what the score gives, or doesn't. */
  public OpenLine freeing(String player, boolean free) throws Refusal {
    return new OpenLine(briefing.freeing(player, free), limits, workbench);
  }

  /** Whether a player leaves out what the score gives. */
  public boolean isFreed(String player) {
    return briefing.measured().freed().contains(player);
  }

  /** The line with other locks. */
  public OpenLine locking(List<Lock> locks) throws Refusal {
    List<LockWish> wishes = locks.stream().map(lock -> LockWish.of(lock, brief())).toList();
    return asking(asked().with(asked().relaying().with(wishes)));
  }

  /**
   * What was measured of a player with one technique.
   *
   * @param peakPerSecond for a moment
   * @param sustainedPerSecond what can go on
   * @param staminaStrokes beyond that, from fresh to spent
   */
  public record Measured(double peakPerSecond, double sustainedPerSecond, double staminaStrokes) {}

  /** The line with what was measured of a player with one technique. */
  public OpenLine measuring(String player, String technique, Measured figures) throws Refusal {
    Map<String, Capability> own = new HashMap<>(measured().getOrDefault(player, Map.of()));
    for (Player each : brief().players()) {
      for (Skill skill : each.skills()) {
        if (each.name().equals(player) && skill.technique().name().equals(technique)) {
          own.put(
              technique,
              skill
                  .capability()
                  .at(figures.peakPerSecond, figures.sustainedPerSecond, figures.staminaStrokes));
        }
      }
    }
    return measuring(player, own);
  }

  /**
   * The line with what is said in words of a player and one technique.
   *
   * @param saying nothing any more if empty
   */
  public OpenLine saying(String player, String technique, Optional<Saying> saying) throws Refusal {
    return new OpenLine(briefing.saying(player, technique, saying), limits, workbench);
  }

  /** What was said in words of a player, by technique. */
  public Map<String, Saying> said(String player) {
    return briefing.measured().said().getOrDefault(player, Map.of());
  }

  /**
   * The line with a player sitting elsewhere.
   *
   * @param seat nowhere in particular if empty
   */
  public OpenLine seating(String player, Optional<Seat> seat) throws Refusal {
    Map<String, Seat> seats = new HashMap<>(asked().seats());
    seats.remove(player);
    seat.ifPresent(where -> seats.put(player, where));
    return asking(asked().with(seats));
  }

  /**
   * The line for other players; locks, seats and techniques of those who go, go with them.
   *
   * @throws Refusal if what a newcomer plays is not known
   */
  public OpenLine playedBy(List<PlayerWish> wishes) throws Refusal {
    Predicate<String> stays =
        name -> wishes.stream().anyMatch(wish -> TypedNames.same(wish.name(), name));
    Map<String, Seat> seats = new HashMap<>(asked().seats());
    seats.keySet().removeIf(stays.negate());
    List<LockWish> locks =
        asked().relaying().locks().stream()
            .filter(lock -> lock.player().stream().allMatch(stays))
            .toList();
    List<PlayerWish> same = asked().players().stream().filter(wishes::contains).toList();
    List<Allowance> allowances =
        allowances().stream()
            .filter(one -> same.stream().anyMatch(wish -> one.isFor(wish.name())))
            .toList();
    return asking(
        asked().with(wishes, allowances).with(seats).with(asked().relaying().with(locks)));
  }

  public SplitRequest asked() {
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
    return tempoOf(line());
  }

  private static TempoMark tempoOf(Line line) {
    return line.tempo().at(line.stroke(0).onset());
  }

  /**
   * Plans it.
   *
   * @param stop asked often; ends the search if it says yes
   * @param progress told whenever a better plan or a higher bound is known
   */
  public SplitLine.SplitOutcome plan(BooleanSupplier stop, Consumer<Splitter.Progress> progress)
      throws Refusal {
    return asAsked(SplitLine.split(briefing, limits, workbench, stop, progress));
  }

  /**
   * The same outcome with its plan judged by what was asked: a plan for a lower share of players
   * shows what it lacks.
   */
  private SplitLine.SplitOutcome asAsked(SplitLine.SplitOutcome found) {
    if (found.brief().equals(brief())) {
      return found;
    }
    Optional<JudgedPlan> judged =
        found.plan().map(plan -> JudgedPlan.of(new Plan(brief(), plan.plan().segments())));
    return new SplitLine.SplitOutcome(
        found.score(),
        found.asked(),
        brief(),
        judged.map(plan -> asAsked(found, plan)).orElse(found.result()),
        judged,
        found.searchSeconds(),
        found.seats(),
        found.freed(),
        found.reasons(),
        found.remedies());
  }

  /** What is proven without a margin of tempo is proven; of another share nothing is. */
  private static SplitResult asAsked(SplitLine.SplitOutcome found, JudgedPlan judged) {
    Optional<Plan> plan = Optional.of(judged.plan());
    int cost = judged.verdict().cost().total();
    return found.isNearest()
        ? new SplitResult.Stopped(plan, OptionalInt.of(cost), 0)
        : found
            .result()
            .match(
                best -> new SplitResult.Best(judged.plan(), cost, best.inRotation()),
                none -> none,
                stopped ->
                    new SplitResult.Stopped(
                        plan, OptionalInt.of(cost), stopped.bound(), stopped.inRotation()));
  }

  /**
   * Looks for plans beside one for this line, each the best for something else.
   *
   * @param present the plan, under the rules of this line
   * @param found what the search for it came to; empty if it was made by hand
   * @param stop asked often; ends all searches if it says yes, with what was found so far
   */
  public SideBySide beside(
      JudgedPlan present,
      Optional<SplitLine.SplitOutcome> found,
      BooleanSupplier stop,
      SideBySide.ComparingProgress progress) {
    SplitLine.SplitOutcome main = outcome(Optional.of(present), found);
    return SideBySide.beside(
        main, main.result().isBest(), limits, workbench, asked().searchSeconds(), stop, progress);
  }

  /**
   * A plan that was made for something else, taken over: its segments as they are, by the names of
   * players and their ways. Empty if one of them or a stroke is not here.
   */
  public Optional<Plan> adopted(Plan plan) {
    List<Segment> segments = new ArrayList<>();
    for (Segment segment : plan.segments()) {
      Optional<Segment> same = adopted(plan, segment);
      if (same.isEmpty()) {
        return Optional.empty();
      }
      segments.add(same.get());
    }
    try {
      return plan.brief().lines().size() == brief().lines().size()
          ? Optional.of(new Plan(brief(), segments))
          : Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private Optional<Segment> adopted(Plan plan, Segment segment) {
    List<Player> players = brief().players();
    for (int i = 0; i < players.size(); i++) {
      List<Way> ways = players.get(i).ways();
      for (int k = 0; k < ways.size(); k++) {
        if (players.get(i).name().equals(plan.player(segment).name())
            && ways.get(k).twinStrings() == plan.way(segment).twinStrings()) {
          return Optional.of(
              new Segment(
                  segment.relay(), i, k, segment.first(), segment.last(), segment.pattern()));
        }
      }
    }
    return Optional.empty();
  }

  /**
   * A report of what is asked and of the plan on the desk, to be kept as any other.
   *
   * @param found what a search said of that plan; a plan made by hand has none
   */
  public SplitLine.SplitOutcome outcome(
      Optional<JudgedPlan> judged, Optional<SplitLine.SplitOutcome> found) {
    return found(
        found
            .map(SplitLine.SplitOutcome::result)
            .filter(result -> result.speaksOf(judged.map(JudgedPlan::plan)))
            .orElseGet(() -> byHand(judged)),
        judged,
        found.map(SplitLine.SplitOutcome::searchSeconds).orElse(0.0));
  }

  /** What a search found for it earlier. */
  SplitLine.SplitOutcome found(SplitResult result, Optional<JudgedPlan> judged, double seconds) {
    return new SplitLine.SplitOutcome(
        score(),
        brief(),
        judged.map(each -> each.plan().brief()).orElse(brief()),
        result,
        judged,
        seconds,
        seats(),
        briefing.measured().freed(),
        List.of(),
        List.of());
  }

  private static SplitResult byHand(Optional<JudgedPlan> judged) {
    return new SplitResult.Stopped(
        judged.map(JudgedPlan::plan),
        judged.stream().mapToInt(j -> j.verdict().cost().total()).findFirst(),
        0);
  }
}
