package stafette.split.rotate;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import stafette.check.PartTrial;
import stafette.plan.Brief;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.score.Line;
import stafette.split.Reason;
import stafette.split.SplitResult;
import stafette.split.Splitter;
import stafette.words.Sentence;
import stafette.words.Settable;

/**
 * The cheapest regular rotation: the players take turns in a fixed order, each in one way, a unit
 * each ({@link RotationUnit}), so that it rehearses itself. Each lands on the first stroke of the
 * next unit, where the next player enters.
 *
 * <p>If the rules or a leaving instrument's target ask for more than the landing note, the overlap
 * is the same at all handoffs, and every way of beginning it earlier or ending it later is tried.
 * At least two players take turns, and all of them get one; units over which the line rests use up
 * no turn. Among these it is exact: all units, overlaps, numbers and orders of players, and
 * techniques, the most promising first, until a bound says that no other costs less. Ties go to
 * longer units, then to fewer players, then to players listed first.
 */
public final class RegularSearch {
  /** So many orders of players fit into the memory of a small machine. */
  private static final int MOST_ORDERS = 300_000;

  private static final Sentence SEVERAL =
      Sentence.of(
          "a regular rotation shares out one line at a time; favour something else where several lines"
              + " are split together");

  private final Brief brief;
  private final List<Units> units;
  private final BooleanSupplier stop;
  private final Consumer<Splitter.Progress> progress;
  private final PartTrial trial;
  private final RotationPrices prices;
  private final List<Integer> needed;
  private final int mostPlayers;
  private final PriorityQueue<Rotations> queue =
      new PriorityQueue<>(
          Comparator.comparingInt(Rotations::bound).thenComparingInt(Rotations::number));
  private int orders;
  private Optional<Plan> best = Optional.empty();
  private Optional<RotationUnit> bestUnit = Optional.empty();
  private int bestCost = Rotation.NEVER;

  /**
   * One way to cut the line.
   *
   * @param starts the first stroke of each turn
   * @param leftOver whether the last turn is what is left over, which must be nobody's only one
   * @param most rotations that cost more are of no interest, by the number of their handoffs
   */
  record Units(RotationUnit unit, List<Integer> starts, boolean leftOver, IntUnaryOperator most) {
    Units {
      starts = List.copyOf(starts);
    }

    /** Any that there is. */
    static Units whatever(RotationUnit unit, Line line) {
      return new Units(unit, unit.starts(line), false, handoffs -> Rotation.NEVER);
    }
  }

  /**
   * @param always who must take part, as indices in the brief
   */
  RegularSearch(
      Brief brief,
      List<Units> units,
      int mostPlayers,
      List<Integer> always,
      BooleanSupplier stop,
      Consumer<Splitter.Progress> progress) {
    this.brief = brief;
    this.units = List.copyOf(units);
    this.mostPlayers = mostPlayers;
    this.stop = stop;
    this.progress = progress;
    this.trial = new PartTrial(brief);
    this.prices = RotationPrices.of(brief, mostPlayers < brief.players().size());
    IntStream locked =
        brief.rules().locks().stream().flatMapToInt(lock -> Lock.playing(lock).stream());
    this.needed =
        IntStream.concat(locked, always.stream().mapToInt(player -> player))
            .distinct()
            .mapToObj(prices::kindOf)
            .toList();
  }

  /**
   * Searches where a rotation is favoured.
   *
   * @param mostPlayers no more of the players take turns
   * @param stop asked often; once it says yes, the best found so far is given back with a bound
   * @param progress told whenever a better rotation is known
   */
  public static SplitResult best(
      Brief brief, int mostPlayers, BooleanSupplier stop, Consumer<Splitter.Progress> progress) {
    if (brief.lines().size() > 1) {
      return new SplitResult.None(List.of(new Reason(Optional.empty(), SEVERAL)));
    }
    List<Units> units =
        RotationUnit.favoured().stream().map(unit -> Units.whatever(unit, brief.line())).toList();
    return new RegularSearch(brief, units, mostPlayers, List.of(), stop, progress).run();
  }

  /** The unit of the best rotation found, if there is one. */
  Optional<RotationUnit> unit() {
    return bestUnit;
  }

  SplitResult run() {
    if (!collect()) {
      return new SplitResult.Stopped(
          Optional.empty(), OptionalInt.empty(), Math.max(0, prices.least(2)));
    }
    while (!queue.isEmpty() && queue.element().bound() < bestCost) {
      Rotations next = queue.remove();
      next.rotation().ifPresentOrElse(rotation -> search(next, rotation), () -> add(made(next)));
      if (isStopped()) {
        return stopped(next.bound());
      }
    }
    return best.<SplitResult>map(plan -> new SplitResult.Best(plan, bestCost))
        .orElseGet(() -> new SplitResult.None(reasons()));
  }

  /** Asked for each order of players that is looked at. */
  private boolean isSpent() {
    orders++;
    return isStopped();
  }

  private boolean isStopped() {
    return orders > MOST_ORDERS || stop.getAsBoolean();
  }

  /** Whether all turns that somebody could play were found before it was stopped. */
  private boolean collect() {
    for (Units each : units) {
      int min = brief.rules().overlap().min();
      for (int shared = min; shared <= Math.max(min, largestTarget()); shared++) {
        for (int early = 0; early < shared; early++) {
          Optional<EqualTurns> turns =
              EqualTurns.of(brief.line(), brief.rules(), each.starts, early, shared - 1 - early);
          if (turns.isPresent() && !collect(each, turns.get())) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private boolean collect(Units from, EqualTurns turns) {
    if (stop.getAsBoolean()) {
      return false;
    }
    TurnCosts costs = new TurnCosts(brief, trial, prices.kinds(), turns);
    int least = Math.max(2, needed.size());
    int most = Math.min(mostPlayers, turns.count() - (from.leftOver ? 1 : 0));
    for (int places = least; places <= most; places++) {
      int bound = costs.least() + prices.least(places);
      add(new Rotations(from, turns, costs, places, bound, queue.size(), Optional.empty()));
    }
    return true;
  }

  private void add(Rotations rotations) {
    if (rotations.bound <= rotations.most()) {
      queue.add(rotations);
    }
  }

  /**
   * All rotations of so many players who take the same turns; made when their turn comes.
   *
   * @param bound none of them costs less, players included
   * @param number of equal bounds the lower one comes first
   */
  private record Rotations(
      Units units,
      EqualTurns turns,
      TurnCosts costs,
      int places,
      int bound,
      int number,
      Optional<Rotation> rotation) {
    int most() {
      return Math.min(Rotation.NEVER - 1, units.most.applyAsInt(turns.count() - 1));
    }
  }

  private Rotations made(Rotations each) {
    Rotation rotation =
        new Rotation(prices.kinds(), each.turns, each.costs, prices.ofKinds(), each.places);
    int bound = rotation.bound() + prices.fixed(each.places);
    return new Rotations(
        each.units, each.turns, each.costs, each.places, bound, each.number, Optional.of(rotation));
  }

  private int largestTarget() {
    return brief.players().stream()
        .mapToInt(player -> brief.rules().weights().overlapTarget(player.instrument()))
        .max()
        .orElse(1);
  }

  private void search(Rotations each, Rotation rotation) {
    int fixed = prices.fixed(rotation.places());
    int enough = Math.min(bestCost, each.most() + 1);
    rotation
        .cheapest(enough - fixed, needed, this::isSpent)
        .ifPresent(
            order -> {
              best = Optional.of(new Plan(brief, rotation.segments(order)));
              bestUnit = Optional.of(each.units.unit);
              bestCost = order.points() + fixed;
              progress.accept(
                  new Splitter.Progress(
                      OptionalInt.of(bestCost),
                      Math.min(rotation.bound() + fixed, bestCost),
                      best));
            });
  }

  private SplitResult stopped(int bound) {
    OptionalInt cost = best.isPresent() ? OptionalInt.of(bestCost) : OptionalInt.empty();
    return new SplitResult.Stopped(best, cost, Math.min(bound, bestCost));
  }

  private List<Reason> reasons() {
    return List.of(
        new Reason(
            Optional.empty(),
            Sentence.of(
                "no regular rotation holds: whether a beat, half a bar, one, two or four bars each,"
                    + " no two or more of these players can take turns in a fixed order;"
                    + " favour balance instead{0}, add a player, or lower the tempo",
                Settable.FAVOUR)));
  }
}
