package stafette.split;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;

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
 * <p>Ties go to smaller crews, then to players listed first. The search knows no clock and no
 * chance: the same brief gives the same plan, unless it is stopped. Time grows with the line's
 * length and with the square of the kinds times techniques while everybody is rested in time; near
 * the limit of what all players together can do it may grow exponentially. Costs must stay below
 * 2<sup>28</sup> points, lines below 2<sup>20</sup> strokes.
 */
public final class Splitter {
  private static final int SLICE = 256;
  private static final int LABELS_BEFORE_BEAM = 2_000;

  /**
   * So many labels fit into the memory of a small machine; beyond them the search stops by itself.
   */
  private static final int MOST_LABELS = 3_000_000;

  private static final int NARROW = 6;
  private static final int WIDE = 40;

  private final Brief brief;
  private final Line line;
  private final BooleanSupplier stop;
  private final List<PlayerKind> kinds;
  private final Handoffs handoffs;
  private final int playerPrice;
  private final PriorityQueue<Candidate> queue =
      new PriorityQueue<>(Comparator.comparingInt(Candidate::bound).thenComparingInt(c -> c.order));
  private Optional<CrewSearch.Goal> best = Optional.empty();
  private int bestCost = Relaxation.NEVER;
  private int labelsMade;

  private Splitter(Brief brief, BooleanSupplier stop) {
    this.brief = brief;
    this.line = brief.line();
    this.stop = stop;
    this.kinds = PlayerKind.of(brief);
    this.handoffs = new Handoffs(line, brief.rules().overlap(), brief.rules().weights(), kinds);
    this.playerPrice = brief.rules().weights().player();
  }

  /**
   * Splits a line; where regular rotations are favoured, no other plan is looked at.
   *
   * @param stop asked often; once it says yes, the best found so far is given back with a proven
   *     bound, as it is when the memory set aside for the search is used up
   */
  public static SplitResult split(Brief brief, BooleanSupplier stop) {
    return brief.rules().favour() == Favour.REGULAR
        ? RegularSearch.best(brief, stop)
        : new Splitter(brief, stop).run();
  }

  private SplitResult run() {
    List<Crew> crews = Crew.all(kinds);
    Crew everybody = crews.get(crews.size() - 1);
    Candidate largest = new Candidate(everybody, crews.size(), 0);
    int floor = largest.search().bound();
    for (int i = 0; i < crews.size() - 1; i++) {
      queue.add(new Candidate(crews.get(i), i, floor));
    }
    queue.add(largest);
    search(everybody);
    return result();
  }

  private void search(Crew everybody) {
    int labels = 0;
    boolean beamed = false;
    while (!queue.isEmpty() && queue.peek().bound() < bestCost && !isStopped()) {
      Candidate candidate = queue.poll();
      candidate.advance();
      labels += SLICE;
      if (candidate.bound() < Relaxation.NEVER) {
        queue.add(candidate);
      }
      if (!beamed && best.isEmpty() && labels >= LABELS_BEFORE_BEAM) {
        beamed = true;
        beam(everybody);
      }
    }
    if (best.isEmpty() && !queue.isEmpty() && queue.peek().bound() < Relaxation.NEVER && !beamed) {
      beam(everybody);
    }
  }

  private boolean isStopped() {
    return labelsMade > MOST_LABELS || stop.getAsBoolean();
  }

  private void beam(Crew crew) {
    Extension extension = extension(crew);
    for (int width : new int[] {NARROW, WIDE}) {
      if (best.isEmpty()) {
        new FirstPlan(line, extension, width).find(stop).ifPresent(goal -> take(goal, crew.size()));
      }
    }
  }

  private void take(CrewSearch.Goal goal, int mostPlayers) {
    long used =
        segments(goal.last(), line.count() - 1).stream()
            .mapToInt(Segment::player)
            .distinct()
            .count();
    int cost = goal.cost() + playerPrice * (int) Math.min(used, mostPlayers);
    if (cost < bestCost) {
      best = Optional.of(goal);
      bestCost = cost;
    }
  }

  private SplitResult result() {
    int bound = queue.isEmpty() ? Relaxation.NEVER : queue.peek().bound();
    Optional<Plan> plan =
        best.map(goal -> new Plan(brief, listedFirst(segments(goal.last(), line.count() - 1))));
    if (plan.isPresent() && bound >= bestCost) {
      return new SplitResult.Best(plan.get(), bestCost);
    }
    if (plan.isEmpty() && bound >= Relaxation.NEVER) {
      return new SplitResult.None(new Explanation(brief, kinds).reasons());
    }
    OptionalInt cost = plan.isPresent() ? OptionalInt.of(bestCost) : OptionalInt.empty();
    return new SplitResult.Stopped(plan, cost, Math.min(bound, bestCost));
  }

  private static List<Segment> segments(Label last, int end) {
    List<Segment> segments = new ArrayList<>();
    Optional<Label> label = Optional.of(last);
    int to = end;
    while (label.isPresent()) {
      Label now = label.get();
      segments.add(0, new Segment(now.player(), now.skill(), now.first(), to));
      to = now.before();
      label = now.parent();
    }
    return segments;
  }

  /** The same plan with players who are alike renamed, so that those listed first come first. */
  private List<Segment> listedFirst(List<Segment> segments) {
    Map<Integer, Integer> names = new LinkedHashMap<>();
    for (PlayerKind kind : kinds) {
      int next = 0;
      for (Segment segment : segments) {
        if (kind.members().contains(segment.player()) && !names.containsKey(segment.player())) {
          names.put(segment.player(), kind.members().get(next++));
        }
      }
    }
    return segments.stream()
        .map(
            s ->
                new Segment(
                    names.getOrDefault(s.player(), s.player()), s.skill(), s.first(), s.last()))
        .toList();
  }

  private Extension extension(Crew crew) {
    return new Extension(crew, line, handoffs, new Relaxation(crew, handoffs, line.count()));
  }

  /** A crew with its search, which is begun only when its turn comes. */
  private final class Candidate {
    private final Crew crew;
    private final int order;
    private final int floor;
    private Optional<CrewSearch> begun = Optional.empty();

    Candidate(Crew crew, int order, int floor) {
      this.crew = crew;
      this.order = order;
      this.floor = floor;
    }

    CrewSearch search() {
      CrewSearch search = begun.orElseGet(() -> new CrewSearch(line, extension(crew)));
      begun = Optional.of(search);
      return search;
    }

    int bound() {
      int own = begun.isEmpty() ? floor : search().bound();
      return own >= Relaxation.NEVER ? Relaxation.NEVER : own + playerPrice * crew.size();
    }

    void advance() {
      if (begun.isEmpty()) {
        search();
        return;
      }
      int before = search().made();
      search().advance(SLICE, Math.max(0, bestCost - playerPrice * crew.size()), stop);
      labelsMade += search().made() - before;
      search().goal().ifPresent(goal -> take(goal, crew.size()));
    }
  }
}
