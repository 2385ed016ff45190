package stafette.split;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.Plan;
import stafette.plan.Segment;

/**
 * The cheapest plan for a line, with its proof.
 *
 * <p>How it goes:
 *
 * <ol>
 *   <li>Everything becomes whole numbers, rounded against the player ({@link Shares}): what is
 *       found holds for the judge too.
 *   <li>Players who are alike form a {@link PlayerKind}. For each kind and technique a {@link
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
 * </ol>
 *
 * <p>Of several relays with hockets, plans are not looked for in which the second of a pair plays
 * in another relay between the pair's first note and its own.
 *
 * <p>Ties go to smaller crews, then to players listed first. The search knows no clock and no
 * chance: the same brief gives the same plan, unless it is stopped. Time grows with the line's
 * length and with the square of the kinds times techniques while everybody is rested in time; near
 * the limit of what all players together can do it may grow exponentially. Costs must stay below
 * 2<sup>28</sup> points, lines below 2<sup>20</sup> strokes.
 */
public final class Splitter {
  private static final int SLICE = 256;
  private static final int LABELS_BEFORE_BEAM = 500;

  /** With more crews than these the bounds of all take so long that a beam comes first. */
  private static final int MANY_CREWS = 8;

  /**
   * So many labels fit into the memory of a small machine; beyond them the search stops by itself.
   */
  private static final int MOST_LABELS = 3_000_000;

  /** Widths of the beam, one after the other as the proof takes longer. */
  private static final int[] WIDTHS = {2, 6, 30, 150, 500};

  /** Each wider beam waits for so many times more labels. */
  private static final int PATIENCE = 6;

  private final Brief brief;
  private final BooleanSupplier stop;
  private final Consumer<Progress> progress;
  private final List<PlayerKind> kinds;
  private final List<Relay> relays;
  private final Bounds bounds;
  private final int playerPrice;
  private final Floors floors;
  private final List<Integer> numbers;
  private final PriorityQueue<Candidate> queue =
      new PriorityQueue<>(
          Comparator.comparingInt(Candidate::bound).thenComparingInt(Candidate::order));
  private final List<Candidate> candidates = new ArrayList<>();
  private Optional<Plan> best = Optional.empty();
  private int bestCost = Relaxation.NEVER;
  private int labels;

  /**
   * How far a search has come.
   *
   * @param cost of the best plan so far, in points; empty while there is none
   * @param bound no plan costs less
   * @param plan the best plan so far
   */
  public record Progress(OptionalInt cost, int bound, Optional<Plan> plan) {}

  private Splitter(
      Brief brief, Workbench workbench, BooleanSupplier stop, Consumer<Progress> progress) {
    this.brief = brief;
    this.stop = stop;
    this.progress = progress;
    this.kinds = PlayerKind.of(brief);
    this.relays =
        Relay.of(brief, kinds, Actor.all(kinds, brief.rules().hocket() != Hocket.NO), workbench);
    this.bounds = new Bounds(brief, relays);
    this.playerPrice = brief.rules().weights().player();
    this.floors = workbench.floors(brief);
    this.numbers = floors.numbers(kinds);
  }

  /**
   * Splits a line; where regular rotations are favoured, no other plan is looked at.
   *
   * @param stop asked often; once it says yes, the best found so far is given back with a proven
   *     bound, as it is when the memory set aside for the search is used up
   */
  public static SplitResult split(Brief brief, BooleanSupplier stop) {
    return split(brief, new Workbench(), stop, progress -> {});
  }

  /**
   * The same, telling how it goes.
   *
   * @param progress told whenever a better plan or a higher bound is known
   */
  public static SplitResult split(Brief brief, BooleanSupplier stop, Consumer<Progress> progress) {
    return split(brief, new Workbench(), stop, progress);
  }

  /**
   * The same with what earlier searches for the line have worked out, so that a new search after a
   * lock or a drag finds the tables ready.
   *
   * @param progress told whenever a better plan or a higher bound is known
   */
  public static SplitResult split(
      Brief brief, Workbench workbench, BooleanSupplier stop, Consumer<Progress> progress) {
    return brief.rules().favour() == Favour.REGULAR
        ? RegularSearch.best(brief, stop, progress)
        : new Splitter(brief, workbench, stop, progress).run();
  }

  private SplitResult run() {
    List<Crew> crews = Crew.all(kinds);
    Crew everybody = crews.get(crews.size() - 1);
    Candidate largest = candidate(everybody, crews.size(), 0);
    largest.begin();
    int floor = largest.boundWithoutPlayers();
    for (int i = 0; i < crews.size() - 1; i++) {
      queue.add(candidate(crews.get(i), i, floor));
    }
    queue.add(largest);
    if (crews.size() > MANY_CREWS) {
      beam(largest, WIDTHS[0]);
    }
    search(largest);
    if (brief.rules().locks().isEmpty()) {
      candidates.forEach(each -> floors.learn(each.crew(), numbers, each.boundWithoutPlayers()));
    }
    return result();
  }

  private Candidate candidate(Crew crew, int order, int floor) {
    int known = Math.max(floor, floors.of(crew, numbers));
    Candidate candidate = new Candidate(crew, order, relays, bounds, playerPrice, known);
    candidates.add(candidate);
    return candidate;
  }

  private void search(Candidate everybody) {
    int told = -1;
    int beams = best.isPresent() ? 1 : 0;
    int nextBeam = LABELS_BEFORE_BEAM;
    int spent = 0;
    while (!queue.isEmpty() && queue.peek().bound() < bestCost && !isStopped()) {
      Candidate candidate = queue.poll();
      int before = candidate.made();
      candidate.advance(SLICE, bestCost, stop);
      labels += candidate.made() - before;
      spent += candidate.made() - before;
      candidate.goal().ifPresent(this::take);
      if (candidate.bound() < Relaxation.NEVER) {
        queue.add(candidate);
      } else if (candidate == everybody && best.isEmpty()) {
        queue.clear();
      }
      if (beams < WIDTHS.length && spent >= nextBeam) {
        beam(everybody, WIDTHS[beams++]);
        nextBeam *= PATIENCE;
      }
      if (!queue.isEmpty() && queue.peek().bound() > told) {
        told = queue.peek().bound();
        tell();
      }
    }
    if (beams == 0 && best.isEmpty() && bound() < Relaxation.NEVER) {
      beam(everybody, WIDTHS[0]);
    }
  }

  private boolean isStopped() {
    return labels > MOST_LABELS || stop.getAsBoolean();
  }

  private void beam(Candidate candidate, int width) {
    if (width > WIDTHS[0]) {
      candidate.price(bestCost, stop);
    }
    if (candidate.bound() < Relaxation.NEVER) {
      new FirstPlan(relays, candidate.extension(), width).find(stop).ifPresent(this::take);
    }
    if (best.isEmpty() && candidate.bound() < Relaxation.NEVER) {
      Crew crew = candidate.crew();
      Extension saving = bounds.extension(crew, Prices.scarce(crew, relays));
      new FirstPlan(relays, saving, width).find(stop).ifPresent(this::take);
    }
  }

  private void take(CrewSearch.Goal goal) {
    List<Segment> segments = Goals.segments(goal, relays, kinds);
    int used = (int) segments.stream().mapToInt(Segment::player).distinct().count();
    int cost = goal.cost() + playerPrice * used;
    if (cost < bestCost) {
      best = Optional.of(new Plan(brief, segments));
      bestCost = cost;
      tell();
    }
  }

  private void tell() {
    progress.accept(new Progress(cost(), bound(), best));
  }

  private OptionalInt cost() {
    return best.isPresent() ? OptionalInt.of(bestCost) : OptionalInt.empty();
  }

  private int bound() {
    return Math.min(bestCost, queue.isEmpty() ? Relaxation.NEVER : queue.peek().bound());
  }

  private SplitResult result() {
    int bound = queue.isEmpty() ? Relaxation.NEVER : queue.peek().bound();
    if (best.isPresent() && bound >= bestCost) {
      return new SplitResult.Best(best.get(), bestCost);
    }
    if (best.isEmpty() && bound >= Relaxation.NEVER) {
      return new SplitResult.None(new Explanation(brief, kinds).reasons());
    }
    return new SplitResult.Stopped(best, cost(), Math.min(bound, bestCost));
  }
}
