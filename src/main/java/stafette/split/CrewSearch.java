package stafette.split;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;

/**
 * The cheapest way for one crew, none of whom need play: A* (Hart, Nilsson and Raphael 1968) over
 * partial plans, by the bound of {@link Relaxation}, deepest first among equals. A label that
 * another one dominates is dropped: same segment begun, no less paid, nobody better off.
 */
final class CrewSearch {
  /** Labels of one place that newcomers are compared with. */
  private static final int MOST_COMPARED = 64;

  private final List<RelayOffers> relays;
  private final Extension extension;
  private final TreeMap<Integer, Deque<Label>> open = new TreeMap<>();
  private final Map<DominanceKey, List<Label>> settled = new HashMap<>();
  private Optional<Goal> goal = Optional.empty();
  private int made;

  /**
   * A whole plan: the label of the stretch that was given its end last.
   *
   * @param end that end
   * @param cost of segments and handoffs, and for those of the crew who don't play; without the
   *     players' price
   * @param path of segments and handoffs alone
   */
  record Goal(Label last, int end, int cost, int path) {
    static Goal of(Label last, int end, Extension extension) {
      return new Goal(last, end, extension.cost(last, end), extension.path(last, end));
    }
  }

  CrewSearch(List<RelayOffers> relays, Extension extension) {
    this.relays = relays;
    this.extension = extension;
    extension.begin(this::add);
  }

  /**
   * No plan of this crew costs less, the players' price apart; {@link Relaxation#NEVER} once it is
   * proven that there is none.
   */
  int bound() {
    int least = open.isEmpty() ? Relaxation.NEVER : open.firstKey();
    return goal.isPresent() ? Math.min(goal.get().cost(), least) : least;
  }

  /** How many labels there have been. */
  int made() {
    return made;
  }

  Optional<Goal> goal() {
    return goal;
  }

  /**
   * Goes on for so many labels, or until the best goal is proven, nothing is left, or the bound is
   * at least {@code enough}.
   */
  void advance(int labels, int enough, BooleanSupplier stop) {
    for (int i = 0; i < labels && bound() < Math.min(enough, known()); i++) {
      if (stop.getAsBoolean()) {
        return;
      }
      settle(next());
    }
  }

  private int known() {
    return goal.map(Goal::cost).orElse(Relaxation.NEVER);
  }

  private Label next() {
    Map.Entry<Integer, Deque<Label>> least = open.firstEntry();
    Label label = least.getValue().pop();
    if (least.getValue().isEmpty()) {
      open.remove(least.getKey());
    }
    return label;
  }

  private void settle(Label label) {
    if (!label.hasEnd()) {
      if (isDominated(label)) {
        return;
      }
      extension.findEnds(label);
      if (label.hasEnd()) {
        add(label);
      }
      return;
    }
    int end = label.end();
    label.nextEnd();
    if (label.hasEnd()) {
      add(label);
    }
    if (extension.follow(label, end, known(), this::add)) {
      goal =
          extension.cost(label, end) < known() ? Optional.of(Goal.of(label, end, extension)) : goal;
    }
  }

  private void add(Label label) {
    int bound = extension.bound(label);
    if (bound < known()) {
      made++;
      open.computeIfAbsent(bound, b -> new ArrayDeque<>()).push(label);
    }
  }

  private boolean isDominated(Label label) {
    List<Label> others =
        settled.computeIfAbsent(
            DominanceKey.of(label, relays.get(label.relay()).count()), p -> new ArrayList<>(2));
    for (Label other : others) {
      if (extension.noWorse(other, label)) {
        return true;
      }
    }
    if (others.size() < MOST_COMPARED) {
      others.add(label);
    }
    return false;
  }
}
