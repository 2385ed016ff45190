package stafette.split;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stafette.check.PartTrial;
import stafette.plan.Brief;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.words.Sentence;
import stafette.words.Settable;

/**
 * The cheapest regular rotation: the players take turns in a fixed order, each with one technique,
 * a unit each ({@link RotationUnit}: a beat, half a bar, one, two or four bars), so that it
 * rehearses itself. Each lands on the first stroke of the next unit, where the next player enters.
 *
 * <p>If the rules or a leaving instrument's target ask for more than the landing note, the overlap
 * is the same at all handoffs, and every way of beginning it earlier or ending it later is tried.
 * At least two players take turns, and all of them get one; units over which the line rests use up
 * no turn. Among these it is exact: all units, overlaps, numbers and orders of players, and
 * techniques, the most promising first, until a bound says that no other costs less. Ties go to
 * longer units, then to fewer players, then to players listed first.
 */
final class RegularSearch {
  private static final Sentence SEVERAL =
      Sentence.of(
          "a regular rotation shares out one line at a time; favour something else where several lines"
              + " are split together");

  private final Brief brief;
  private final BooleanSupplier stop;
  private final Consumer<Splitter.Progress> progress;
  private final PartTrial trial;
  private final List<List<Integer>> kinds = new ArrayList<>();
  private final Set<Integer> needed;
  private final int playerPrice;
  private final List<Rotation> rotations = new ArrayList<>();
  private Optional<Plan> best = Optional.empty();
  private int bestCost = Rotation.NEVER;

  private RegularSearch(Brief brief, BooleanSupplier stop, Consumer<Splitter.Progress> progress) {
    this.brief = brief;
    this.stop = stop;
    this.progress = progress;
    this.trial = new PartTrial(brief);
    this.playerPrice = brief.rules().weights().player();
    collectKinds();
    this.needed =
        brief.rules().locks().stream()
            .flatMapToInt(lock -> Lock.playing(lock).stream())
            .mapToObj(this::kindOf)
            .collect(Collectors.toSet());
  }

  /** Players who are alike, in the order listed; whom a lock names is like nobody else. */
  private void collectKinds() {
    Set<Integer> named = Locked.players(brief.rules().locks());
    for (int i = 0; i < brief.players().size(); i++) {
      int player = i;
      kinds.stream()
          .filter(kind -> !named.contains(player) && !named.contains(kind.get(0)))
          .filter(kind -> brief.players().get(player).isLike(brief.players().get(kind.get(0))))
          .findFirst()
          .ifPresentOrElse(
              kind -> kind.add(player), () -> kinds.add(new ArrayList<>(List.of(player))));
    }
  }

  private int kindOf(int player) {
    return IntStream.range(0, kinds.size())
        .filter(kind -> kinds.get(kind).contains(player))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Searches.
   *
   * @param stop asked often; once it says yes, the best found so far is given back with a bound
   * @param progress told whenever a better rotation is known
   */
  static SplitResult best(Brief brief, BooleanSupplier stop, Consumer<Splitter.Progress> progress) {
    if (brief.lines().size() > 1) {
      return new SplitResult.None(List.of(new Reason(Optional.empty(), SEVERAL)));
    }
    return new RegularSearch(brief, stop, progress).run();
  }

  private SplitResult run() {
    if (!collect()) {
      return new SplitResult.Stopped(Optional.empty(), OptionalInt.empty(), 2 * playerPrice);
    }
    rotations.sort(Comparator.comparingInt(this::bound));
    for (Rotation rotation : rotations) {
      if (bound(rotation) >= bestCost) {
        break;
      }
      search(rotation);
      if (stop.getAsBoolean()) {
        return stopped(rotation);
      }
    }
    return best.<SplitResult>map(plan -> new SplitResult.Best(plan, bestCost))
        .orElseGet(() -> new SplitResult.None(reasons()));
  }

  /** Whether all rotations that somebody could play were found before it was stopped. */
  private boolean collect() {
    for (RotationUnit unit : RotationUnit.values()) {
      int min = brief.rules().overlap().min();
      for (int shared = min; shared <= Math.max(min, largestTarget()); shared++) {
        for (int early = 0; early < shared; early++) {
          Optional<Turns> turns =
              Turns.of(brief.line(), brief.rules(), unit, early, shared - 1 - early);
          if (turns.isPresent() && !collect(turns.get())) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private boolean collect(Turns turns) {
    for (int places = 2; places <= Math.min(brief.players().size(), turns.count()); places++) {
      if (stop.getAsBoolean()) {
        return false;
      }
      Rotation rotation = new Rotation(brief, trial, kinds, turns, places);
      if (rotation.bound() < Rotation.NEVER) {
        rotations.add(rotation);
      }
    }
    return true;
  }

  private int largestTarget() {
    return brief.players().stream()
        .mapToInt(player -> brief.rules().weights().overlapTarget(player.instrument()))
        .max()
        .orElse(1);
  }

  private int bound(Rotation rotation) {
    return rotation.bound() + playerPrice * rotation.places();
  }

  private void search(Rotation rotation) {
    int price = playerPrice * rotation.places();
    rotation
        .cheapest(bestCost - price, needed, stop)
        .ifPresent(
            order -> {
              best = Optional.of(new Plan(brief, rotation.segments(order)));
              bestCost = order.points() + price;
              progress.accept(
                  new Splitter.Progress(
                      OptionalInt.of(bestCost), Math.min(bound(rotation), bestCost), best));
            });
  }

  private SplitResult stopped(Rotation at) {
    OptionalInt cost = best.isPresent() ? OptionalInt.of(bestCost) : OptionalInt.empty();
    return new SplitResult.Stopped(best, cost, Math.min(bound(at), bestCost));
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
