package stafette.split;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import stafette.plan.Brief;
import stafette.plan.Hocket;
import stafette.plan.Plan;
import stafette.plan.Segment;

/**
 * The cheapest plan for a line, with its proof.
 *
 * <p>How it goes:
 *
 * <ol>
 *   <li>Everything becomes whole numbers, rounded against the player ({@link RoundedUnits}): what
 *       is found holds for the judge too.
 *   <li>Players who are alike form a {@link PlayerKind}. For each kind and way of playing a {@link
 *       SegmentTable} knows which segments a fresh player can play and what they cost; what a
 *       player brings along is added in constant time (Lindley's recursion).
 *   <li>A {@link Crew} is a choice of players. All cost but the players' price depends on one
 *       segment or one handoff alone, so a crew's cheapest plan is a shortest path with resources:
 *       what each player has left. {@link Relaxation} solves it backward with everybody always
 *       rested; that bound steers an A* search ({@link CrewSearch}) in which each label carries
 *       everybody's tiredness, air and last sound, and dominated labels are dropped.
 *   <li>All crews are searched side by side, always the one with the lowest bound, until a plan
 *       costs no more than any bound left. A beam ({@link FirstPlan}) gives a first plan where the
 *       proof takes long.
 *   <li>Who costs no less idle than used, as all do whom the user named, is in every crew ({@link
 *       PlayerPrices}); labels know who has played, and {@link IdlePlayers} bounds what is still to
 *       be paid for the others.
 *   <li>Where the tempo may drift, segments hold for players for whom it is as hard as the drift
 *       makes it, and cost what they do at the written tempo ({@link PlayerWithinMargin}).
 * </ol>
 *
 * <p>Of several relays with hockets, plans are not looked for in which the second of a pair plays
 * in another relay between the pair's first note and its own.
 *
 * <p>Ties go to smaller crews, then to players listed first. The search knows no clock and no
 * chance: the same brief gives the same plan, unless it is stopped. Time grows with the line's
 * length and with the square of the kinds times ways of playing while everybody is rested in time;
 * near the limit of what all players together can do it may grow exponentially. Costs must stay
 * below 2<sup>28</sup> points, lines below 2<sup>20</sup> strokes.
 */
public final class Splitter {
  private static final int SLICE = 256;

  /** With more crews than these the bounds of all take so long that a beam comes first. */
  private static final int MANY_CREWS = 8;

  /** Of more kinds it is found out first what each costs at least, and how strong it is. */
  private static final int MANY_KINDS = 3;

  /** With more kinds crews are so many that a proof is a matter of luck. */
  private static final int TOO_MANY_KINDS = 8;

  /** Bounds for more actors would fill the memory: they are made for small crews alone. */
  private static final int MOST_ACTORS = 1000;

  /**
   * So many labels fit into the memory of a small machine; beyond them the search stops by itself.
   */
  private static final int MOST_LABELS = 1_000_000;

  /** Where kinds are too many it does so sooner, since more time would not help. */
  private static final int MOST_WORK = 500_000;

  private final Brief brief;
  private final BooleanSupplier stop;
  private final Consumer<Progress> progress;
  private final List<PlayerKind> kinds;
  private final List<RelayOffers> relays;
  private final Bounds bounds;
  private final PlayerPrices prices;
  private final KnownBounds floors;
  private final List<Integer> numbers;
  private final int mostPlayers;
  private final boolean looksAtAll;
  private final List<CrewProblem> candidates = new ArrayList<>();
  private final CrewProblem everybody;
  private final Crews crews;
  private final CrewQueue queue;
  private boolean everybodyQueued;
  private Optional<CrewProblem> few = Optional.empty();
  private Optional<Plan> best = Optional.empty();
  private int bestCost = Relaxation.NEVER;
  private int settled = Relaxation.NEVER;
  private int labels;
  private int beamed;

  /**
   * How far a search has come.
   *
   * @param cost of the best plan so far, in points; empty while there is none
   * @param bound no plan costs less
   * @param plan the best plan so far
   */
  public record Progress(OptionalInt cost, int bound, Optional<Plan> plan) {}

  Splitter(
      Brief brief,
      int mostPlayers,
      Workbench workbench,
      BooleanSupplier stop,
      Consumer<Progress> progress) {
    this.brief = brief;
    this.mostPlayers = mostPlayers;
    this.stop = stop;
    this.progress = progress;
    this.kinds = PlayerKind.of(brief);
    List<Actor> actors = Actor.all(kinds, brief.rules().hocket() != Hocket.NO);
    this.relays = RelayOffers.of(brief, kinds, actors, workbench);
    this.prices =
        new PlayerPrices(
            brief, kinds, kinds.size() <= TOO_MANY_KINDS, mostPlayers < brief.players().size());
    this.bounds = new Bounds(brief, relays, prices);
    this.floors = workbench.floors(brief);
    this.numbers = floors.numbers(kinds);
    this.looksAtAll = actors.size() <= MOST_ACTORS;
    this.everybody = candidate(new Crews.Made(Crew.everybody(kinds), 0));
    this.crews = new Crews(kinds, figures(), needed());
    this.queue = new CrewQueue(crews, this::queued);
  }

  private Crews.CrewFigures figures() {
    int[] withKind = new int[kinds.size()];
    Multipliers.Strength strength = Multipliers.Strength.unknown(kinds.size());
    if (looksAtAll) {
      everybody.begin();
    }
    int floor = everybody.proven();
    if (looksAtAll && kinds.size() > MANY_KINDS && floor < Relaxation.NEVER) {
      withKind = bounds.withKind(everybody.crew());
      strength = Multipliers.strength(everybody.crew(), relays);
    }
    for (int kind = 0; kind < withKind.length; kind++) {
      withKind[kind] = prices.isWelcome(kind) ? floor : withKind[kind];
    }
    return new Crews.CrewFigures(
        prices.base(),
        prices.inCrew(),
        mostPlayers,
        floor,
        Arrays.stream(withKind).boxed().toList(),
        strength);
  }

  /** The kinds of all who are in every crew: by a lock, or because they are welcome. */
  private int[] needed() {
    IntStream locked =
        Arrays.stream(LockedPlayers.needed(brief.rules().locks(), kinds))
            .filter(kind -> !prices.isWelcome(kind));
    return IntStream.concat(Arrays.stream(prices.welcome()), locked).sorted().toArray();
  }

  /**
   * Splits a line, whatever is favoured; {@link stafette.split.rotate.RotationOrCheapest} asks for
   * rotations too.
   *
   * @param stop asked often; once it says yes, the best found so far is given back with a proven
   *     bound, as it is when the memory set aside for the search is used up
   */
  public static SplitResult split(Brief brief, BooleanSupplier stop) {
    return split(brief, new Workbench(), stop, progress -> {});
  }

  /**
   * Splits a line with what earlier searches for it have worked out, so that a new search after a
   * lock or a drag finds the tables ready.
   *
   * @param progress told whenever a better plan or a higher bound is known
   */
  public static SplitResult split(
      Brief brief, Workbench workbench, BooleanSupplier stop, Consumer<Progress> progress) {
    return new Splitter(brief, brief.players().size(), workbench, stop, progress).run();
  }

  /** The cheapest plan that uses at most so many of the players. */
  public static SplitResult among(Brief brief, int mostPlayers, BooleanSupplier stop) {
    return new Splitter(brief, mostPlayers, new Workbench(), stop, progress -> {}).run();
  }

  SplitResult run() {
    WideningBeams beams = new WideningBeams();
    if (looksAtAll && everybody.crew().smallerOnes() > MANY_CREWS + 1) {
      beams.send(everybody);
    }
    search(beams);
    if (brief.rules().locks().isEmpty()) {
      candidates.forEach(each -> floors.learn(each.crew(), numbers, each.proven()));
    }
    return result();
  }

  private CrewProblem candidate(Crews.Made made) {
    int proven = floors.of(made.crew(), numbers);
    CrewProblem candidate =
        new CrewProblem(made.crew(), relays, bounds, prices.of(made.crew()), proven, made.floor());
    candidates.add(candidate);
    return candidate;
  }

  private CrewProblem queued(Crews.Made made) {
    if (made.crew().equals(everybody.crew())) {
      everybodyQueued = true;
      return everybody;
    }
    return candidate(made);
  }

  private void search(WideningBeams beams) {
    int told = -1;
    while (queue.bound() < bestCost && !isStopped()) {
      CrewProblem candidate = queue.next();
      advance(candidate);
      if (candidate.isSettled()) {
        settled = Math.min(settled, candidate.bound());
      } else {
        queue.add(candidate);
      }
      candidate.goal().ifPresent(this::take);
      queue.letGo(candidate, bestCost);
      lookAtAll();
      beams.sendIfDue();
      if (bound() > told) {
        told = bound();
        tell();
      }
    }
    if (best.isEmpty() && bound() < Relaxation.NEVER) {
      beams.sendFirst();
    }
  }

  private void advance(CrewProblem candidate) {
    int before = candidate.made();
    candidate.advance(SLICE, bestCost, stop);
    labels += candidate.made() - before;
  }

  /**
   * While there is no plan, all players together are looked at beside each crew: what they can't do
   * nobody can.
   */
  private void lookAtAll() {
    if (best.isEmpty() && looksAtAll && !everybodyQueued && kinds.size() > MANY_KINDS) {
      advance(everybody);
      everybody.goal().ifPresent(this::take);
    }
  }

  /** Whose partial plans beams follow: those of all, or of the few who promise most. */
  private CrewProblem guide() {
    if (kinds.size() <= TOO_MANY_KINDS && everybody.crew().size() <= mostPlayers) {
      return everybody;
    }
    Crew promising = crews.mostPromising(TOO_MANY_KINDS, kindsIn(best));
    if (few.filter(known -> known.crew().equals(promising)).isEmpty()) {
      few = Optional.of(candidate(new Crews.Made(promising, 0)));
    }
    return few.get();
  }

  private List<Integer> kindsIn(Optional<Plan> plan) {
    List<Integer> players = plan.map(Splitter::players).orElse(List.of());
    return IntStream.range(0, kinds.size())
        .boxed()
        .flatMap(
            kind -> kinds.get(kind).members().stream().filter(players::contains).map(p -> kind))
        .toList();
  }

  private static List<Integer> players(Plan plan) {
    return plan.segments().stream().map(Segment::player).distinct().toList();
  }

  private boolean isImpossible() {
    return best.isEmpty() && everybody.bound() >= Relaxation.NEVER;
  }

  private boolean isStopped() {
    boolean spent = kinds.size() > TOO_MANY_KINDS ? work() > MOST_WORK : labels > MOST_LABELS;
    return spent || stop.getAsBoolean();
  }

  /** Labels made, and what crews and their bounds have taken, roughly in what labels take. */
  int work() {
    return labels
        + beamed
        + crews.work()
        + relays.stream().distinct().mapToInt(RelayOffers::work).sum();
  }

  /** Beams, each wider one as the proof takes longer. */
  private final class WideningBeams {
    private static final int[] WIDTHS = {2, 6, 30, 150, 500};
    private static final int LABELS_BEFORE_FIRST = 500;

    /** Each wider one waits for so many times more labels. */
    private static final int PATIENCE = 6;

    /** Where kinds are too many their bounds take more than the labels. */
    private static final int WORK_PER_LABEL = 20;

    private int sent;
    private int next = LABELS_BEFORE_FIRST;

    void sendIfDue() {
      int waited =
          kinds.size() > TOO_MANY_KINDS ? Math.max(labels, work() / WORK_PER_LABEL) : labels;
      if (sent < WIDTHS.length && waited >= next) {
        send(guide());
        next *= PATIENCE;
      }
    }

    void sendFirst() {
      if (sent == 0) {
        send(guide());
      }
    }

    /** Prices for a few of many would take longer to find than they save. */
    void send(CrewProblem candidate) {
      int width = WIDTHS[sent++];
      if (width > WIDTHS[0] && candidate == everybody) {
        price(candidate);
      }
      if (candidate.bound() < Relaxation.NEVER) {
        follow(candidate.extension(), width);
      }
      if (best.isEmpty() && candidate.bound() < Relaxation.NEVER) {
        Crew crew = candidate.crew();
        follow(bounds.extension(crew, Multipliers.scarce(crew, relays)), width);
      }
    }

    private void price(CrewProblem candidate) {
      boolean waits = queue.remove(candidate);
      candidate.price(bestCost, stop);
      if (waits) {
        queue.add(candidate);
      }
    }

    private void follow(Extension extension, int width) {
      FirstPlan beam = new FirstPlan(relays, extension, width);
      beam.find(stop).ifPresent(Splitter.this::take);
      beamed += beam.made();
    }
  }

  private void take(CrewSearch.Goal goal) {
    List<Segment> segments = PlanReader.segments(goal, relays, kinds);
    int used = (int) segments.stream().mapToInt(Segment::player).distinct().count();
    int cost = goal.path() + prices.of(segments);
    if (cost < bestCost && used <= mostPlayers) {
      best = Optional.of(new Plan(brief, segments));
      bestCost = cost;
      queue.letGo(cost);
      tell();
    }
  }

  private void tell() {
    if (bound() < Relaxation.NEVER) {
      progress.accept(new Progress(cost(), bound(), best));
    }
  }

  private OptionalInt cost() {
    return best.isPresent() ? OptionalInt.of(bestCost) : OptionalInt.empty();
  }

  /** No plan costs less; {@link Relaxation#NEVER} if there is none. */
  private int bound() {
    return isImpossible() ? Relaxation.NEVER : Math.min(bestCost, Math.min(settled, queue.bound()));
  }

  private SplitResult result() {
    int bound = bound();
    if (best.isPresent() && bound >= bestCost) {
      return new SplitResult.Best(best.get(), bestCost);
    }
    if (best.isEmpty() && bound >= Relaxation.NEVER) {
      return new SplitResult.None(new Explanation(brief, kinds).reasons());
    }
    return new SplitResult.Stopped(best, cost(), bound);
  }
}
