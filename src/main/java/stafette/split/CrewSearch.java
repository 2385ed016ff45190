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
import stafette.score.Line;

/**
 * The cheapest way for one crew, none of whom need play: A* (Hart, Nilsson and Raphael 1968) over
 * partial plans, by the bound of {@link Relaxation}, deepest first among equals. A label that
 * another one dominates is dropped: same segment begun, no less paid, nobody better off.
 */
final class CrewSearch {
  /** Labels of one place that newcomers are compared with. */
  private static final int MOST_COMPARED = 64;

  private final Line line;
  private final Extension extension;
  private final TreeMap<Integer, Deque<Label>> open = new TreeMap<>();
  private final Map<Long, List<Label>> settled = new HashMap<>();
  private Optional<Goal> goal = Optional.empty();
  private int made;

  /**
   * A whole plan: the label of its last segment.
   *
   * @param last the last segment, which ends with the line
   * @param cost of segments and handoffs, without the players' price
   */
  record Goal(Label last, int cost) {}

  CrewSearch(Line line, Extension extension) {
    this.line = line;
    this.extension = extension;
    extension.begin(this::add);
  }

  /**
   * No plan of this crew costs less, the players' price apart; {@link Relaxation#NEVER} once it is
   * proven that there is none.
   */
  int bound() {
    if (goal.isPresent()) {
      return goal.get().cost();
    }
    return open.isEmpty() ? Relaxation.NEVER : open.firstKey();
  }

  /** How many labels there have been. */
  int made() {
    return made;
  }

  Optional<Goal> goal() {
    return goal;
  }

  /**
   * Goes on for so many labels, or until there is a goal, nothing left, or a bound of at least
   * {@code enough}.
   */
  void advance(int labels, int enough, BooleanSupplier stop) {
    for (int i = 0; i < labels && goal.isEmpty() && bound() < enough; i++) {
      if (stop.getAsBoolean()) {
        return;
      }
      settle(next());
    }
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
    int value = extension.bound(label);
    label.nextEnd();
    if (label.hasEnd()) {
      add(label);
    }
    if (end == line.count() - 1) {
      if (extension.completes(label, end)) {
        goal = Optional.of(new Goal(label, value));
      }
    } else {
      extension.follow(label, end, this::add);
    }
  }

  private void add(Label label) {
    int bound = extension.bound(label);
    if (bound < Relaxation.NEVER) {
      made++;
      open.computeIfAbsent(bound, b -> new ArrayDeque<>()).push(label);
    }
  }

  private boolean isDominated(Label label) {
    List<Label> others =
        settled.computeIfAbsent(label.place(line.count()), p -> new ArrayList<>(2));
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
